/** What the readings say so far: the closed form for the cables at hand, computed beside the page while readings come in. */
import { effect, signal, untracked } from '@preact/signals';
import type { Measured } from '../../../../findings/schema.ts';
import type { Entry } from '../../../../journal/entry.ts';
import { Bench } from '../../worker/bench.ts';
import { ahead, entries, folded, held } from '../journal/journal.ts';
import { inHand } from './inHand.ts';
import { pieceNamed } from './names.ts';
import { lastKept } from './sitting.ts';

export interface SoFar {
  /** Metal area by cable, as far as it was asked for; a cable of which too little is known is missing. */
  areas: ReadonlyMap<string, Measured>;
  /** The newest entry that they count; empty for none. */
  counts: string;
}

const NOTHING: SoFar = { areas: new Map(), counts: '' };

export const soFar = signal<SoFar>(NOTHING);

/** The cable of the reading before first, because that is what has just changed; then the one in hand. */
function cablesAtHand(): string[] {
  const trial = folded.value;
  const before = trial && lastKept.value ? pieceNamed(trial, lastKept.value.specimen)?.cable : undefined;
  return [...new Set([before, inHand.value?.item.cable])].filter((cable) => cable !== undefined);
}

/** When many readings come at once, as from another device, only the cables of the last of them are asked for. */
const MOST_READ = 2;

/** The cables that readings are of. */
function cablesRead(news: readonly Entry[]): string[] {
  const trial = folded.peek();
  const pieces = news.filter(({ kind }) => kind === 'reading').map(({ body }) => body.specimen ?? '');
  return trial === null ? [] : pieces.flatMap((piece) => pieceNamed(trial, piece)?.cable ?? []);
}

/**
 * Follows the open journal until the answer is called. News goes to the worker while it is still being written to disk; what
 * follows from it is shown only once it is kept. One computation at a time.
 */
export function followAreas(): () => void {
  const bench = new Bench();
  let latest = entries.peek();
  let sent: readonly Entry[] = [];
  let asked: readonly string[] = [];
  let trial = '';
  let busy = false;
  let over = false;
  let found: { journal: readonly Entry[]; soFar: SoFar } | null = null;

  const show = () => {
    // Nothing that is not kept yet, nor what belongs to a journal that was left.
    if (!over && found !== null && found.journal === entries.peek()) soFar.value = found.soFar;
  };

  const compute = async (): Promise<void> => {
    const journal = latest;
    if (busy || over || journal.length === 0) return;
    const now = held.peek()?.trial ?? '';
    // A journal that holds less than before: what was to be written was not.
    const fresh = now !== trial || sent.length > journal.length;
    const known = new Set(fresh ? [] : sent);
    const news = journal === sent && !fresh ? [] : journal.filter((entry) => !known.has(entry));
    const [read, hand] = [fresh ? [] : cablesRead(news), cablesAtHand()];
    // Until a reading is kept, the one before it still counts as the last: what is at hand is known a moment later.
    const nothingNew = hand.every((cable) => asked.includes(cable)) || journal !== entries.peek();
    if (!fresh && news.length === 0 && nothingNew) return;
    // What is read just now takes the place of what was read before it.
    asked = [...new Set(read.length === 0 ? hand : [...read.slice(-MOST_READ), ...hand.slice(-1)])];
    [busy, sent, trial] = [true, journal, now];
    const answer = await bench.ask('soFar', { fresh, news, cables: asked }).catch(() => []);
    const areas = new Map(answer.map(({ cable, area }) => [cable, area]));
    found = { journal, soFar: { areas, counts: journal.at(-1)?.id ?? '' } };
    show();
    busy = false;
    void untracked(compute);
  };

  const hear = (journal: readonly Entry[]) => {
    latest = journal;
    void untracked(compute);
  };
  ahead.add(hear);
  const stops = [
    effect(() => {
      latest = entries.value;
      untracked(show);
    }),
    // In a moment: where a reading is what brought another cable to hand, its news comes first and asks for both.
    effect(() => void (cablesAtHand() && setTimeout(compute))),
  ];
  return () => {
    over = true;
    ahead.delete(hear);
    for (const stop of stops) stop();
    bench.stop();
    soFar.value = NOTHING;
  };
}
