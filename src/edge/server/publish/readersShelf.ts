import { DamagedData, type Store, type TrialLine } from '../../store/store.ts';
import { byOpening, LINE_KINDS, trialLine } from '../../store/trialLine.ts';
import { keepLast } from '../keepLast.ts';
import { sealedForReaders } from './sealedForReaders.ts';

/** Lines that are kept between requests: many shelves full. Ours. */
const MOST_LINES = 10_000;

interface KeptLine {
  /** State of the journal that it was made of. */
  state: string;
  /** Null for a trial of which readers see nothing. */
  line: TrialLine | null;
}

export type ReadersShelf = () => Promise<TrialLine[]>;

/**
 * The shelf as readers see it: trials of which a part is sealed and not hidden, described by what was sealed. Trials that only begin
 * are not even named.
 */
export function readersShelf(store: Store): ReadersShelf {
  const kept = new Map<string, KeptLine>();
  const lineOf = async (trial: string, state: string): Promise<TrialLine | null> => {
    const known = kept.get(trial);
    if (known?.state === state) return known.line;
    const entries = await store.entries(trial).catch((error: unknown) => {
      // Whoever keeps the bench is told of damage; a reader's shelf stands without that trial until it is mended.
      if (error instanceof DamagedData) return null;
      throw error;
    });
    if (entries === null) return null;
    const seen = sealedForReaders(entries);
    const described = seen.filter(({ kind }) => (LINE_KINDS as readonly string[]).includes(kind));
    const line = seen.length === 0 ? null : trialLine(trial, described, seen.length);
    keepLast(kept, trial, { state, line }, MOST_LINES);
    return line;
  };
  return async () => {
    const name = await store.name();
    const lines: TrialLine[] = [];
    for (const { trial, entries } of await store.trials()) {
      const line = await lineOf(trial, `${name} ${entries}`);
      if (line !== null) lines.push(line);
    }
    return lines.sort(byOpening);
  };
}
