import type Database from 'libsql';
import type { Device, DeviceBook, DeviceRole } from '../devices.ts';
import { knownDevice } from '../refuse.ts';
import { type Bytes, textOf } from './text.ts';

interface DeviceRow {
  id: Bytes;
  name: Bytes;
  role: Bytes;
  added_at: Bytes;
  seen_at: Bytes | null;
  revoked_at: Bytes | null;
}

const COLUMNS = ['id', 'name', 'role', 'added_at', 'seen_at', 'revoked_at'];
const SHOWN = `SELECT ${COLUMNS.map((column) => `CAST(${column} AS BLOB) AS ${column}`).join(', ')} FROM devices`;

function deviceOf(row: DeviceRow): Device {
  return {
    id: textOf(row.id),
    name: textOf(row.name),
    role: textOf(row.role) as DeviceRole,
    addedAt: textOf(row.added_at),
    seenAt: row.seen_at === null ? null : textOf(row.seen_at),
    revokedAt: row.revoked_at === null ? null : textOf(row.revoked_at),
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
    devices: async () => all(`${SHOWN} ORDER BY devices.added_at, devices.id`).map(deviceOf),
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
