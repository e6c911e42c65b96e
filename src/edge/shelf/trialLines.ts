import { shelfCables } from '../../findings/across/shelfCables.ts';
import type { ShelfCable } from '../../findings/shapes/shelf.ts';
import { ENGINE_VERSION } from '../../findings/version.ts';
import type { Entry } from '../../journal/entry.ts';
import { entriesByCode } from '../../trial/byCode.ts';
import { fold } from '../../trial/fold.ts';
import { sealedForReaders } from '../server/publish/sealedForReaders.ts';

/** Share of cases in which the intervals of the shelf hold the true value. */
const SHELF_LEVEL = 0.95;
/** Changes whenever a line of the shelf is made in another way, so that nothing kept from before is taken for it. */
const LINES = 2;

/** For whom the lines are: readers get nothing of what is not sealed. */
export type ForWhom = 'bench' | 'reader';

/**
 * The cables of a trial as the shelf remembers them, without random draws. By codes while the trial is blind; nothing of a trial that
 * was put away, and for readers nothing that is not sealed.
 */
export function trialLines(entries: readonly Entry[], whom: ForWhom): ShelfCable[] {
  const whole = fold(entries);
  if (whole.putAway !== null) return [];
  const seen = whom === 'reader' ? sealedForReaders(entries) : entries;
  if (seen.length === 0) return [];
  const open = whom === 'reader' ? fold(seen) : whole;
  // Names that are hidden now stay hidden here, even where a part was sealed with them in sight.
  const trial = whole.blinding.blind ? fold(entriesByCode(seen, open)) : open;
  return shelfCables(trial, SHELF_LEVEL);
}

/** What the lines of a trial rest on: as long as this stays the same, so do they. */
export const linesMark = (store: string, entries: number): string => `${ENGINE_VERSION}.${LINES} ${store} ${entries}`;
