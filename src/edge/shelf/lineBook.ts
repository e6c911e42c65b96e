import type { ShelfCable } from '../../findings/shapes/shelf.ts';
import { textHash } from '../../journal/textHash.ts';
import { type ReadersShelf, readersShelf } from '../server/publish/readersShelf.ts';
import { DamagedData, type Store, type TrialLine } from '../store/store.ts';
import { NOT_REMEMBERED, type Remembered, type RememberedTrial } from './rememberedLines.ts';
import { type ForWhom, linesMark, trialLines } from './trialLines.ts';

/** Lines of a trial as they are handed out. */
export interface TrialLines {
  trial: string;
  mark: string;
  cables: ShelfCable[];
}

/** What changed on the shelf for somebody who holds some of it. */
export interface ShelfNews {
  /** Trials of which something else is held, or nothing. */
  trials: TrialLines[];
  /** Trials still to be asked for: they would have taken too long. */
  left: number;
  /** Trials that are held and no longer on the shelf. */
  gone: string[];
  /** Titles of trials that the disk damaged, so that nothing is said of their cables. */
  damaged: string[];
}

/** How long one answer computes before the rest is left to the next, ms. */
const PATIENCE_MS = 250;
/** Most cables in one answer. */
const MOST_CABLES = 2000;

const keyOf = (whom: ForWhom, trial: string): string => `${whom} ${trial}`;

/**
 * Keeps the lines of every trial by what they rest on: a trial is computed once, and again when its journal has grown. One request
 * computes for a short while only, so that the bench goes on recording meanwhile.
 *
 * @param sealedShelf what readers may know of, which the bench's server keeps already
 */
export function lineBook(
  store: Store,
  remembered: Remembered = NOT_REMEMBERED,
  sealedShelf: ReadersShelf = readersShelf(store),
) {
  let known: Map<string, RememberedTrial> | null = null;
  // How long a journal is says how much is not sealed, which is nothing for readers.
  const salt = crypto.randomUUID();
  const toldMark = (whom: ForWhom, mark: string) => (whom === 'reader' ? textHash(`${salt} ${mark}`) : mark);

  /** What they may know of, each with how many entries its journal holds altogether. */
  const listFor = async (whom: ForWhom): Promise<TrialLine[]> => {
    const all = await store.trials();
    if (whom === 'bench') return all;
    const entries = new Map(all.map((line) => [line.trial, line.entries]));
    return (await sealedShelf()).map((line) => ({ ...line, entries: entries.get(line.trial) ?? 0 }));
  };

  const linesOf = async (trial: string, mark: string, whom: ForWhom): Promise<RememberedTrial> => {
    known ??= remembered.all();
    const key = keyOf(whom, trial);
    const found = known.get(key);
    if (found?.mark === mark) return found;
    const made = { key, mark, cables: trialLines(await store.entries(trial), whom) };
    known.set(key, made);
    remembered.add(made);
    return made;
  };

  return async (whom: ForWhom, have: Readonly<Record<string, string>>, patience = PATIENCE_MS): Promise<ShelfNews> => {
    const [name, list] = [await store.name(), await listFor(whom)];
    const until = Date.now() + patience;
    const news: ShelfNews = { trials: [], left: 0, gone: [], damaged: [] };
    let cables = 0;
    for (const { trial, title, entries } of list) {
      const mark = linesMark(name, entries);
      if (have[trial] === toldMark(whom, mark)) continue;
      // At least one trial each time, however slow it is.
      if (news.trials.length > 0 && (Date.now() >= until || (cables >= MOST_CABLES && Number.isFinite(patience)))) {
        news.left += 1;
        continue;
      }
      try {
        const made = await linesOf(trial, mark, whom);
        news.trials.push({ trial, mark: toldMark(whom, mark), cables: made.cables });
        cables += made.cables.length;
      } catch (error) {
        if (!(error instanceof DamagedData)) throw error;
        news.damaged.push(title);
      }
    }
    const there = new Set(list.map(({ trial }) => trial));
    news.gone = Object.keys(have).filter((trial) => !there.has(trial));
    return news;
  };
}

export type LineBook = ReturnType<typeof lineBook>;

/** Every line of the shelf at once, for whoever waits for it. */
export async function wholeShelf(book: LineBook, whom: ForWhom): Promise<{ cables: ShelfCable[]; damaged: string[] }> {
  const { trials, damaged } = await book(whom, {}, Number.POSITIVE_INFINITY);
  return { cables: trials.flatMap(({ cables }) => cables), damaged };
}
