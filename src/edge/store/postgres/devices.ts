import type { Device, DeviceBook, DeviceRole } from '../devices.ts';
import { knownDevice } from '../refuse.ts';
import type { Base } from './base.ts';

interface DeviceRow {
  id: string;
  name: string;
  role: string;
  added_at: string;
  seen_at: string | null;
  revoked_at: string | null;
}

const SHOWN = 'SELECT id, name, role, added_at, seen_at, revoked_at FROM';

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

/** The table of devices in a PostgreSQL database. */
export function postgresDevices({ pool, tables: { devices } }: Base): DeviceBook {
  const all = async (query: string, ...values: string[]) => (await pool.query<DeviceRow>(query, values)).rows;
  const run = async (query: string, ...values: string[]) => (await pool.query(query, values)).rowCount ?? 0;
  return {
    async addDevice({ id, name, role, tokenHash, at }) {
      const insert = `INSERT INTO ${devices} (id, name, role, token_hash, added_at) VALUES ($1, $2, $3, $4, $5) ON CONFLICT DO NOTHING`;
      if ((await run(insert, id, name, role, tokenHash, at)) === 0) throw knownDevice();
    },
    devices: async () => (await all(`${SHOWN} ${devices} ORDER BY added_at, id`)).map(deviceOf),
    async deviceByToken(tokenHash) {
      const [row] = await all(`${SHOWN} ${devices} WHERE token_hash = $1 AND revoked_at IS NULL`, tokenHash);
      return row === undefined ? null : deviceOf(row);
    },
    async revokeDevice(id, at) {
      return (await run(`UPDATE ${devices} SET revoked_at = coalesce(revoked_at, $1) WHERE id = $2`, at, id)) > 0;
    },
    async seenDevice(id, at) {
      await run(`UPDATE ${devices} SET seen_at = $1 WHERE id = $2`, at, id);
    },
  };
}
