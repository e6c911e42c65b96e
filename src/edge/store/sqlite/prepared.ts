import type Database from 'libsql';

const kept = new WeakMap<Database.Database, Map<string, Database.Statement>>();

/** The statement of a query, made once for each database: making it takes longer than running it. */
export function prepared(database: Database.Database, query: string): Database.Statement {
  const statements = kept.get(database) ?? new Map<string, Database.Statement>();
  kept.set(database, statements);
  const statement = statements.get(query) ?? database.prepare(query);
  statements.set(query, statement);
  return statement;
}

/** Closes a database and lets go of its statements, so that its file can be let go of too (see `release.ts`). */
export function closeDatabase(database: Database.Database): void {
  kept.delete(database);
  database.close();
}
