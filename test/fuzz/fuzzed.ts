/** What came of a run with made-up input. */
export interface Fuzzed {
  bodies: number;
  /** Entries that were let in. */
  accepted: number;
  /** How often each outcome came. */
  outcomes: Record<string, number>;
  /** What must never happen; none is wanted. At most the first twenty are kept. */
  troubles: string[];
}

const MOST_TROUBLES = 20;
const LONGEST_INPUT = 4000;

export function newFuzzed(): Fuzzed {
  return { bodies: 0, accepted: 0, outcomes: {}, troubles: [] };
}

/** Notes an error together with the input that brought it about. */
export function troubled(fuzzed: Fuzzed, error: unknown, input: string): void {
  if (fuzzed.troubles.length >= MOST_TROUBLES) return;
  const said = error instanceof Error ? (error.stack ?? error.message) : String(error);
  fuzzed.troubles.push(`${said}\n  input: ${input.slice(0, LONGEST_INPUT)}`);
}

/** Two runs as one. */
export function together(a: Fuzzed, b: Fuzzed): Fuzzed {
  const outcomes = { ...a.outcomes };
  for (const [what, times] of Object.entries(b.outcomes)) outcomes[what] = (outcomes[what] ?? 0) + times;
  return {
    bodies: a.bodies + b.bodies,
    accepted: a.accepted + b.accepted,
    outcomes,
    troubles: [...a.troubles, ...b.troubles],
  };
}
