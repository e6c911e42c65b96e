import type { Device, DeviceRole } from '../store/devices.ts';
import type { Store } from '../store/store.ts';
import { fromThisComputer } from './askerAddress.ts';
import type { BenchMiddleware } from './bench.ts';
import { refuse } from './refusal.ts';
import { tokenHash } from './share/token.ts';

/** Who asks: a device that was let in, or, without one, somebody at this computer. */
export interface Asker {
  role: DeviceRole;
  device: Device | null;
}

/** What one may ask for: to read, to record, or to say who else may. */
export type Act = 'read' | 'record' | 'keep';

const MAY: Readonly<Record<DeviceRole, readonly Act[]>> = {
  reader: ['read'],
  recorder: ['read', 'record'],
  keeper: ['read', 'record', 'keep'],
};

/** How long a device counts as seen before it is noted again, ms: noting is a write, and asking is frequent. */
const SEEN_FOR_MS = 60_000;

/**
 * Lets in who may ask at all: this computer, or a device by the token that it was given. No cookie is read or set, so no
 * foreign page can ask in somebody's name.
 */
export function onlyKnownAskers(store: Store, now: () => number): BenchMiddleware {
  const seen = new Map<string, number>();
  return async (c, next) => {
    const token = /^Bearer\s+(\S{1,200})$/i.exec(c.req.header('authorization') ?? '')?.[1];
    if (token === undefined) {
      if (!fromThisComputer(c)) return turnedAway(c, 'a request without a token');
      c.set('asker', { role: 'keeper', device: null });
      return next();
    }
    const device = await store.deviceByToken(tokenHash(token));
    if (device === null) return turnedAway(c, 'a token that is not known here, or not any more');
    if (now() - (seen.get(device.id) ?? Number.NEGATIVE_INFINITY) >= SEEN_FOR_MS) {
      seen.set(device.id, now());
      await store.seenDevice(device.id, new Date(now()).toISOString());
    }
    c.set('asker', { role: device.role, device });
    return next();
  };
}

function turnedAway(c: Parameters<BenchMiddleware>[0], found: string): Response {
  c.header('www-authenticate', 'Bearer');
  return refuse(c, 401, {
    found,
    expected: 'a device that was added on the bench computer',
    advice: 'Add this device with a new code from the bench computer; what it recorded is kept on it meanwhile.',
  });
}

const ACT_WORDS: Readonly<Record<Act, string>> = {
  read: 'read',
  record: 'record',
  keep: 'add and take off devices',
};

/** Lets only those roles through that may do this. */
export function mayOnly(act: Act): BenchMiddleware {
  return async (c, next) => {
    const { role } = c.get('asker');
    if (MAY[role].includes(act)) return next();
    return refuse(c, 403, {
      found: `a ${role}`,
      expected: `a role that may ${ACT_WORDS[act]}`,
      advice: 'Nothing was changed. Add this device anew with another role on the bench computer.',
    });
  };
}

/** Lets only somebody at the bench computer itself through. */
export function onlyAtTheBench(): BenchMiddleware {
  return async (c, next) => {
    if (fromThisComputer(c) && c.get('asker').device === null) return next();
    return refuse(c, 403, {
      found: 'a request from another device',
      expected: 'somebody at the bench computer itself',
      advice: 'Do it there.',
    });
  };
}
