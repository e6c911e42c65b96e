import type Database from 'libsql';
import type { Device, DeviceBook, DeviceRole } from '../devices.ts';
import { knownDevice } from '../refuse.ts';

interface DeviceRow {
  id: string;
  name: string;
  role: string;
  added_at: string;
  seen_at: string | null;
  revoked_at: string | null;
}

const SHOWN = 'SELECT id, name, role, added_at, seen_at, revoked_at FROM devices';

function deviceOf(row: DeviceRow): Device {
  return {
    id: row.id,
    name: row.name,
    role: row.role as DeviceRole,
    addedAt: row.added_at,
    seenAt: row.seen_at,
    revokedAt: row.revoked_at,
  };
}

/** The table of devices in a SQLite file. */
export function sqliteDevices(database: Database.Database): DeviceBook {
  const all = (query: string, ...values: string[]) => database.prepare(query).all(...values) as DeviceRow[];
  const run = (query: string, ...values: string[]) => database.prepare(query).run(...values).changes;
  return {
    async addDevice({ id, name, role, tokenHash, at }) {
      const insert = `INSERT INTO devices (id, name, role, token_hash, added_at) VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING`;
      if (run(insert, id, name, role, tokenHash, at) === 0) throw knownDevice();
    },
    devices: async () => all(`${SHOWN} ORDER BY added_at, id`).map(deviceOf),
    async deviceByToken(tokenHash) {
      const [row] = all(`${SHOWN} WHERE token_hash = ? AND revoked_at IS NULL`, tokenHash);
      return row === undefined ? null : deviceOf(row);
    },
    async revokeDevice(id, at) {
      return run('UPDATE devices SET revoked_at = coalesce(revoked_at, ?) WHERE id = ?', at, id) > 0;
    },
    async seenDevice(id, at) {
      run('UPDATE devices SET seen_at = ? WHERE id = ?', at, id);
    },
  };
}
