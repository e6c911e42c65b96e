/** Which figures the ends of a scale can have, and what is said of one that none can. */
import type { CriterionFound } from '../../findings/shapes/decide.ts';
import { CRITERIA, roundedEnd } from '../../findings/standing/criteria.ts';
import { endText, unitOf } from './criterionWords.ts';

type Kind = Pick<CriterionFound, 'id' | 'unit'>;

/** Shares of one: copper to twice what a label claims, evenness of a wall to all of it; judged ease either way of the mean. */
const OWN: Readonly<Record<string, readonly [number, number]>> = {
  copper: [0, 2],
  concentricity: [0, 1],
  judged: [-10, 10],
};
/** So many times the usual ends of a cable of 1/0 AWG (53.5 mm²) is beyond every cable. The project's own choice. */
const BEYOND = 100;
const USUAL_AREA = 53.5;
/** Where a criterion has no usual ends: prices in every currency, and what endurance tests count. */
const MOST = 1e7;

/** Least and most that an end can be, in the criterion's own unit. */
export function endRange({ id }: Pick<CriterionFound, 'id'>): readonly [number, number] {
  const own = OWN[id];
  if (own) return own;
  const kind = CRITERIA.find((each) => each.id === id);
  return [0, kind ? roundedEnd(BEYOND * Math.max(...kind.ends(USUAL_AREA))) : MOST];
}

/** What is wrong with an end that was typed, in one sentence; empty when nothing is. */
export function endTrouble(criterion: Kind, typed: string, end: number): string {
  const unit = unitOf(criterion);
  if (!Number.isFinite(end))
    return `Found "${typed}"; expected a number${criterion.unit === '1' ? '' : ` of ${unit}`}.`;
  const [least, most] = endRange(criterion);
  if (end >= least && end <= most) return '';
  return `Found "${typed}"; expected ${endText(criterion, least)} to ${endText(criterion, most)}${unit === '' ? '' : ` ${unit}`}.`;
}
