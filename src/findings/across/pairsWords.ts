import type { Across, AcrossRow, RatioOfTwo } from './across.ts';
import { IF_NO_ERROR } from './links.ts';

/** More pairs than this are counted, not named. */
const MOST_NAMED = 6;

const parts = ({ interval: [low, high] }: RatioOfTwo): boolean => low > 1 || high < 1;

/** `A and B; C and D`: the pairs by their names, with the trial where two cables have one name. */
function namesOf(pairs: readonly RatioOfTwo[], rows: readonly AcrossRow[]): string {
  const shared = (name: string) => rows.filter(({ line }) => line.name === name).length > 1;
  const nameOf = ({ line }: AcrossRow) =>
    `${line.name || line.cable}${shared(line.name) ? ` (${line.title || line.trial})` : ''}`;
  return pairs.map(({ first, second }) => `${nameOf(first)} and ${nameOf(second)}`).join('; ');
}

/**
 * Which of three or more cables differ, each two looked at by themselves: the shorter list of those that can and those that cannot be
 * parted. Empty where nothing is compared two by two.
 */
export function pairsWords({
  pairs,
  groups,
  between,
  quantity,
}: Pick<Across, 'pairs' | 'groups' | 'between' | 'quantity'>): string {
  if (pairs.length === 0) return '';
  const rows = groups.flatMap((group) => group.rows);
  const apart = pairs.filter(parts);
  const together = pairs.filter((pair) => !parts(pair));
  // A price carries no error of a trial.
  const brings = between === null && groups.length > 1 && quantity.linkedBy !== null;
  const unknown = brings ? IF_NO_ERROR : '';
  if (together.length === 0) return `Every two of these differ, each pair looked at by itself${unknown}.`;
  if (apart.length === 0) return `No two of these can be parted, each pair looked at by itself${unknown}.`;
  if (Math.min(apart.length, together.length) > MOST_NAMED)
    return `${apart.length} of the ${pairs.length} pairs differ, each looked at by itself${unknown}; the others cannot be parted.`;
  return apart.length <= together.length
    ? `These differ, the larger first, each pair looked at by itself: ${namesOf(apart, rows)}${unknown}. No other two can be parted.`
    : `These cannot be parted, each pair looked at by itself: ${namesOf(together, rows)}. Every other two differ${unknown}.`;
}
