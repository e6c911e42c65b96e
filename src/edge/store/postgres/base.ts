import type { Pool, QueryResult, QueryResultRow } from 'pg';

/** Names of the tables, each with its schema. */
export interface Tables {
  shelf: string;
  trials: string;
  entries: string;
  blobs: string;
  devices: string;
}

/** Where a store's tables are. */
export interface Base {
  pool: Pool;
  schema: string;
  tables: Tables;
  /** What begins a transaction whose commit is on the disk when it is answered. */
  begin: string;
}

/** What can be asked: the pool, or one connection inside a transaction. */
export interface Asked {
  query<Row extends QueryResultRow>(text: string, values?: unknown[]): Promise<QueryResult<Row>>;
}

/** A name as SQL writes it, whatever is in it. */
export function quoted(name: string): string {
  return `"${name.replaceAll('"', '""')}"`;
}

export function tablesIn(schema: string): Tables {
  const at = (table: string) => `${quoted(schema)}.${table}`;
  return {
    shelf: at('shelf'),
    trials: at('trials'),
    entries: at('entries'),
    blobs: at('blobs'),
    devices: at('devices'),
  };
}

/** Runs `work` in one transaction on a connection of its own; nothing of it stays when it throws. */
export async function inTransaction<T>(
  { pool, begin }: Pick<Base, 'pool' | 'begin'>,
  work: (asked: Asked) => Promise<T>,
): Promise<T> {
  const client = await pool.connect();
  try {
    await client.query(begin);
    const outcome = await work(client);
    await client.query('COMMIT');
    client.release();
    return outcome;
  } catch (error) {
    // The connection is closed, which undoes the transaction even where ROLLBACK could not be sent any more.
    client.release(true);
    throw error;
  }
}
