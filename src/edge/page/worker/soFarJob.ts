import { areasSoFar } from '../../../findings/bench/areasSoFar.ts';
import type { Entry } from '../../../journal/entry.ts';
import { joined } from '../../../journal/sync/idOrder.ts';
import { fold } from '../../../trial/fold.ts';
import type { Jobs } from './jobs.ts';

/** Share of cases that an interval holds the true value in. */
const LEVEL = 0.95;

/** The journal as this worker was told it, so that only news need be sent; and what it means. */
let journal: readonly Entry[] = [];
let trial = fold([]);

/** The metal area of some cables by the closed form alone, after `news`; `fresh` begins another journal. */
export function soFarJob({ fresh, news, cables }: Jobs['soFar']['ask']): Jobs['soFar']['answer'] {
  if (fresh || news.length > 0) {
    journal = joined(fresh ? [] : journal, news);
    trial = fold(journal);
  }
  return areasSoFar(trial, cables, LEVEL);
}
