import { findingsOf } from '../../../findings/findings.ts';
import type { Entry } from '../../../journal/entry.ts';
import { joined } from '../../../journal/sync/idOrder.ts';
import { fold } from '../../../trial/fold.ts';
import type { Jobs } from './jobs.ts';

/** Share of cases that an interval holds the true value in. */
const LEVEL = 0.95;

/** The journal as this worker was told it, so that only news need be sent. */
let journal: readonly Entry[] = [];

/** The metal area of every cable by the closed form alone, after `news`; `fresh` begins another journal. */
export function soFarJob({ fresh, news }: Jobs['soFar']['ask']): Jobs['soFar']['answer'] {
  journal = joined(fresh ? [] : journal, news);
  const { cables } = findingsOf(fold(journal), { level: LEVEL, draws: 0 });
  return cables.flatMap(({ cable, conductor_area: area }) => (area === null ? [] : [{ cable, area }]));
}
