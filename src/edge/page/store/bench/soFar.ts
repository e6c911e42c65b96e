/** What the readings say so far of every cable: the closed form, computed beside the page while readings come in. */
import { effect, signal } from '@preact/signals';
import type { Measured } from '../../../../findings/schema.ts';
import type { Entry } from '../../../../journal/entry.ts';
import { Bench } from '../../worker/bench.ts';
import { entries, held } from '../journal/journal.ts';

/** Metal area by cable; a cable of which too little is known is missing. */
export const areasSoFar = signal<ReadonlyMap<string, Measured>>(new Map());

/** Follows the open journal until the answer is called. */
export function followAreas(): () => void {
  const bench = new Bench();
  let sent: readonly Entry[] = [];
  let trial = '';
  let busy = false;
  let due = false;
  let over = false;

  const compute = async (): Promise<void> => {
    if (busy) return;
    busy = true;
    due = false;
    const journal = entries.peek();
    const fresh = held.peek()?.trial !== trial;
    trial = held.peek()?.trial ?? '';
    const known = new Set(fresh ? [] : sent);
    const news = journal.filter((entry) => !known.has(entry));
    sent = journal;
    try {
      const areas = await bench.ask('soFar', { fresh, news });
      if (!over) areasSoFar.value = new Map(areas.map(({ cable, area }) => [cable, area]));
    } catch {
      // Too little on record to compute from, or the page is being left: nothing is shown.
      trial = '';
    }
    busy = false;
    if (due && !over) void compute();
  };

  const stop = effect(() => {
    if (entries.value.length === 0) return;
    due = true;
    requestAnimationFrame(() => due && !over && void compute());
  });
  return () => {
    over = true;
    stop();
    bench.stop();
    areasSoFar.value = new Map();
  };
}
