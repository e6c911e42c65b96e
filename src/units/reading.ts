/** What came of reading a text: a value, or what was found, what was expected and what to do about it. */
export type ReadOutcome<T> = { ok: true; value: T } | { ok: false; found: string; expected: string; advice?: string };
