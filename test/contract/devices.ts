import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { NewDevice } from '../../src/edge/store/devices.ts';
import { type Store, StoreRefusal } from '../../src/edge/store/store.ts';

const PHONE: NewDevice = {
  id: 'phone-1',
  name: 'Ruth’s phone',
  role: 'recorder',
  tokenHash: 'a'.repeat(64),
  at: '2026-05-01T10:00:00.000Z',
};
const TABLET: NewDevice = {
  id: 'tablet-1',
  name: 'Club tablet',
  role: 'reader',
  tokenHash: 'b'.repeat(64),
  at: '2026-05-02T10:00:00.000Z',
};
const SHOWN = { addedAt: PHONE.at, id: PHONE.id, name: PHONE.name, role: PHONE.role, seenAt: null, revokedAt: null };

/** What every store promises about the devices that may ask. */
export function deviceContract(name: string, open: () => Promise<Store>): void {
  describe(`${name}: devices`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
    });
    afterEach(async () => {
      await store.close();
    });

    it('are none at first', async () => {
      expect(await store.devices()).toEqual([]);
      expect(await store.deviceByToken(PHONE.tokenHash)).toBeNull();
      expect(await store.revokeDevice('phone-1', PHONE.at)).toBe(false);
    });

    it('are listed in the order in which they came, without what lets them in', async () => {
      await store.addDevice(TABLET);
      await store.addDevice(PHONE);
      const listed = await store.devices();
      expect(listed.map((device) => device.id)).toEqual(['phone-1', 'tablet-1']);
      expect(listed.find((device) => device.id === 'phone-1')).toEqual(SHOWN);
      expect(JSON.stringify(listed)).not.toContain(PHONE.tokenHash);
    });

    it('are known by the hash of their token', async () => {
      await store.addDevice(PHONE);
      await store.addDevice(TABLET);
      expect(await store.deviceByToken(PHONE.tokenHash)).toEqual(SHOWN);
      expect(await store.deviceByToken('c'.repeat(64))).toBeNull();
    });

    it('come in once only by an id and by a token', async () => {
      await store.addDevice(PHONE);
      await expect(store.addDevice({ ...TABLET, id: PHONE.id })).rejects.toThrow(StoreRefusal);
      await expect(store.addDevice({ ...TABLET, tokenHash: PHONE.tokenHash })).rejects.toThrow(StoreRefusal);
      expect(await store.devices()).toEqual([SHOWN]);
    });

    it('are turned away for good, and stay on the list', async () => {
      await store.addDevice(PHONE);
      expect(await store.revokeDevice('phone-1', '2026-05-03T10:00:00.000Z')).toBe(true);
      expect(await store.revokeDevice('phone-1', '2026-05-09T10:00:00.000Z')).toBe(true);
      expect(await store.deviceByToken(PHONE.tokenHash)).toBeNull();
      expect((await store.devices())[0]?.revokedAt).toBe('2026-05-03T10:00:00.000Z');
      await expect(store.addDevice(PHONE)).rejects.toThrow(StoreRefusal);
    });

    it('are remembered when they were seen', async () => {
      await store.addDevice(PHONE);
      await store.seenDevice('phone-1', '2026-05-03T10:00:00.000Z');
      await store.seenDevice('phone-1', '2026-05-04T10:00:00.000Z');
      await store.seenDevice('nobody', '2026-05-05T10:00:00.000Z');
      expect((await store.deviceByToken(PHONE.tokenHash))?.seenAt).toBe('2026-05-04T10:00:00.000Z');
    });
  });
}
