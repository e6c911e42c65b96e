import { StoreRefusal } from '../store.ts';

/** Host and database of an address, for a sentence: never its user or password. */
export function whereIs(url: string): string {
  try {
    const { hostname, port, pathname } = new URL(url);
    return `${hostname || 'this computer'}${port === '' ? '' : `:${port}`}${decodeURIComponent(pathname)}`;
  } catch {
    return 'the address in DATABASE_URL';
  }
}

/**
 * What an error of the database means for the person; null when it is none that they can do something about.
 * Codes of five characters: PostgreSQL manual, appendix A.
 */
export function troubleSentence(error: unknown, url: string): string | null {
  const code = String((error as { code?: unknown })?.code ?? '');
  const message = error instanceof Error ? error.message : String(error);
  const where = whereIs(url);
  if (/^28/.test(code)) return `The database at ${where} does not know this user and password; look at DATABASE_URL.`;
  if (code === '3D000') return `There is no such database at ${where}; make it with createdb, or look at DATABASE_URL.`;
  if (code === '42501')
    return `This user may not do that in the database at ${where}; let it make a schema once: GRANT CREATE ON DATABASE.`;
  if (code === '53100') return `The disk of the database at ${where} is full; make room, then send again.`;
  if (code === '53300')
    return `The database at ${where} has no connection left; raise max_connections or close others.`;
  const away = /^(08|57P|ECONN|ENOTFOUND|EHOSTUNREACH|ENETUNREACH|ETIMEDOUT|EPIPE|EAI_AGAIN)/.test(code);
  if (away || /Connection terminated|timeout|socket/i.test(message))
    return `The database at ${where} does not answer; look whether it runs and can be reached from here, then send again.`;
  return null;
}

/** The same object whose every promise tells a database's trouble in a sentence. */
export function tellingTrouble<T extends object>(store: T, url: string): T {
  const told = Object.entries(store).map(([name, method]) => [
    name,
    async (...args: unknown[]) => {
      try {
        return await (method as (...args: unknown[]) => unknown)(...args);
      } catch (error) {
        throw refusalOf(error, url);
      }
    },
  ]);
  return Object.fromEntries(told) as T;
}

export function refusalOf(error: unknown, url: string): unknown {
  if (error instanceof StoreRefusal) return error;
  const sentence = troubleSentence(error, url);
  return sentence === null ? error : new StoreRefusal(sentence, { cause: error });
}
