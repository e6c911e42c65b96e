import { blobName } from '../blobName.ts';
import { refuseAlteredBlob, refuseUnfitBlob } from '../refuse.ts';
import type { Read } from './read.ts';

export async function putBlob({ pool, tables }: Read, trial: string, bytes: Uint8Array): Promise<string> {
  refuseUnfitBlob(bytes);
  const name = blobName(bytes);
  await pool.query(
    // The name is made of the content, so that other bytes under it can only be damaged ones.
    `INSERT INTO ${tables.blobs} AS b (trial, name, bytes) VALUES ($1, $2, $3) ON CONFLICT (trial, name)
     DO UPDATE SET bytes = excluded.bytes WHERE b.bytes IS DISTINCT FROM excluded.bytes`,
    [trial, name, Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength)],
  );
  return name;
}

export async function getBlob({ pool, tables }: Read, trial: string, name: string): Promise<Uint8Array | null> {
  const { rows } = await pool.query<{ bytes: Buffer }>(
    `SELECT bytes FROM ${tables.blobs} WHERE trial = $1 AND name = $2`,
    [trial, name],
  );
  return rows[0] === undefined ? null : refuseAlteredBlob(name, new Uint8Array(rows[0].bytes));
}

export async function blobNames({ pool, tables }: Read, trial: string): Promise<string[]> {
  const { rows } = await pool.query<{ name: string }>(
    `SELECT name FROM ${tables.blobs} WHERE trial = $1 ORDER BY name`,
    [trial],
  );
  return rows.map((row) => row.name);
}
