import { type AreaOf, areasSoFar } from '../../../findings/bench/areasSoFar.ts';
import type { Entry } from '../../../journal/entry.ts';
import { joined } from '../../../journal/sync/idOrder.ts';
import { LaidOutBefore } from '../../../methods/assay/laidOut.ts';
import { fold } from '../../../trial/fold.ts';
import type { Jobs } from './jobs.ts';

/** Share of cases that an interval holds the true value in. */
const LEVEL = 0.95;

/** The journal as this worker was told it, so that only news need be sent; and what it says, so that asking again is quick. */
let journal: readonly Entry[] = [];
let laidOut = new LaidOutBefore();
let areaOf: AreaOf = () => null;

/** The metal area of some cables by the closed form alone, after `news`; `fresh` begins another journal. */
export function soFarJob({ fresh, news, cables }: Jobs['soFar']['ask']): Jobs['soFar']['answer'] {
  if (fresh) {
    journal = [];
    laidOut = new LaidOutBefore();
  }
  if (fresh || news.length > 0) {
    journal = joined(journal, news);
    areaOf = areasSoFar(fold(journal), LEVEL, laidOut);
  }
  return cables.flatMap((cable) => {
    const area = areaOf(cable);
    return area === null ? [] : [{ cable, area }];
  });
}
