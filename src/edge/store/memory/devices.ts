import type { Device, DeviceBook } from '../devices.ts';
import { knownDevice } from '../refuse.ts';

interface Kept extends Device {
  tokenHash: string;
}

/** Devices kept in memory. */
export function memoryDevices(): DeviceBook {
  const kept: Kept[] = [];
  const shown = ({ tokenHash: _, ...device }: Kept): Device => device;
  return {
    async addDevice({ id, name, role, tokenHash, at }) {
      if (kept.some((device) => device.id === id || device.tokenHash === tokenHash)) throw knownDevice();
      kept.push({ id, name, role, tokenHash, addedAt: at, seenAt: null, revokedAt: null });
    },
    devices: async () => kept.map(shown).sort((a, b) => (a.addedAt < b.addedAt ? -1 : 1)),
    async deviceByToken(tokenHash) {
      const found = kept.find((device) => device.tokenHash === tokenHash && device.revokedAt === null);
      return found === undefined ? null : shown(found);
    },
    async revokeDevice(id, at) {
      const found = kept.find((device) => device.id === id);
      if (found !== undefined) found.revokedAt ??= at;
      return found !== undefined;
    },
    async seenDevice(id, at) {
      const found = kept.find((device) => device.id === id);
      if (found !== undefined) found.seenAt = at;
    },
  };
}
