import { median } from '../../numerics/describe.ts';
import { formatPlain } from '../../units/digits.ts';
import type { CableGroups } from '../rows/cableGroups.ts';
import { meanOf } from './meanOf.ts';

const MM = 1e3;
/**
 * A round bundle in a round jacket has nowhere more than twice its mean wall, since the wall opposite cannot fall below nothing: a
 * reading so many times the middle of the others is a slip. A little more is allowed for, because the others may all be thin.
 */
const MOST_TIMES = 2.5;
/** A wall may really be thin somewhere; so small a part of the middle of the others is a slip of the decimal point or the unit. */
const LEAST_PART = 1 / 6;
/** Other readings that it takes before one of them can be called a slip. */
const OTHERS = 2;
/** Standard uncertainties within which a wall must stay above nothing: about 95 in 100. */
const COVERAGE = 2;

const mm = (metres: number) => `${formatPlain(metres * MM, 3)} mm`;

/**
 * Why a wall as read cannot be taken for one, in a sentence; empty where nothing speaks against it. A figure of such a wall would be
 * wrong without looking so, hence it is held back, and nothing is left out silently: which reading to strike is for a person to say.
 */
export function wallDoubt(groups: CableGroups): string {
  const read = groups.of('wall_thickness').flatMap((g) => g.readings);
  if (read.length === 0) return '';
  const at = (position: string) => (position.trim() === '' ? '' : ` at ${position.trim()}`);
  const outer = meanOf(groups.of('outer_diameter'));
  const check = 'Check that reading and its unit, and strike it out if it is a slip; until then the wall is held back.';
  const thickest = read.reduce((most, r) => (r.value > most.value ? r : most));
  if (outer && 2 * thickest.value >= outer.value)
    return `A wall of ${mm(thickest.value)}${at(thickest.position)} is more than half of the ${mm(outer.value)} over the jacket, which cannot be. ${check}`;
  for (const one of read) {
    const others = read.filter((r) => r !== one).map((r) => r.value);
    if (others.length < OTHERS) break;
    const middle = median(others);
    if (one.value > MOST_TIMES * middle || one.value < LEAST_PART * middle)
      return `A wall of ${mm(one.value)}${at(one.position)} does not go with the others, ${mm(middle)} in the middle of them. ${check}`;
  }
  const m = meanOf(groups.of('wall_thickness'));
  return m && m.value <= COVERAGE * m.u
    ? 'The readings of the wall scatter so widely that they would allow none at all: read it again; until then it is held back.'
    : '';
}
