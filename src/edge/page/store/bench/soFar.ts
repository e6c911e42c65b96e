/** What the readings say so far: the closed form for the cables at hand, computed beside the page while readings come in. */
import { effect, signal } from '@preact/signals';
import type { Measured } from '../../../../findings/schema.ts';
import type { Entry } from '../../../../journal/entry.ts';
import { Bench } from '../../worker/bench.ts';
import { entries, folded, held } from '../journal/journal.ts';
import { inHand } from './inHand.ts';
import { pieceNamed } from './names.ts';
import { lastKept } from './record.ts';

/** Metal area by cable, as far as it was asked for; a cable of which too little is known is missing. */
export const areas = signal<ReadonlyMap<string, Measured>>(new Map());

/** The cable of the reading before first, because that is what has just changed; then the one in hand. */
function cablesAtHand(): string[] {
  const trial = folded.value;
  const before = trial && lastKept.value ? pieceNamed(trial, lastKept.value.specimen)?.cable : undefined;
  return [...new Set([before, inHand.value?.item.cable])].filter((cable) => cable !== undefined);
}

/** Follows the open journal until the answer is called. One computation at a time; the next begins with the latest. */
export function followAreas(): () => void {
  const bench = new Bench();
  let sent: ReadonlySet<Entry> = new Set();
  let trial = '';
  let busy = false;
  let due = false;
  let over = false;

  const compute = async (): Promise<void> => {
    if (busy || !due || over) return;
    busy = true;
    due = false;
    const [journal, cables] = [entries.peek(), cablesAtHand()];
    const fresh = held.peek()?.trial !== trial;
    const news = fresh ? journal : journal.filter((entry) => !sent.has(entry));
    trial = held.peek()?.trial ?? '';
    sent = new Set(journal);
    try {
      const found = await bench.ask('soFar', { fresh, news, cables });
      if (!over) areas.value = new Map(found.map(({ cable, area }) => [cable, area]));
    } catch {
      // Nothing can be computed from what is on record, or the page is being left: nothing is shown.
      trial = '';
      areas.value = new Map();
    }
    busy = false;
    void compute();
  };

  const stop = effect(() => {
    if (entries.value.length === 0 || cablesAtHand().length === 0) return;
    due = true;
    queueMicrotask(compute);
  });
  return () => {
    over = true;
    stop();
    bench.stop();
    areas.value = new Map();
  };
}
