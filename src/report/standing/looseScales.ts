import type { CriterionFound } from '../../findings/shapes/decide.ts';
import { CRITERIA } from '../../findings/standing/criteria.ts';
import { andList } from '../words/andList.ts';

/** Endurance counted in shares that came through has ends of its own; counted in times it follows what was seen. */
const ownEnds = ({ id, unit }: CriterionFound): boolean => {
  const kind = CRITERIA.find((each) => each.id === id);
  return kind ? !kind.bySize : id.startsWith('endurance:') && unit === '1';
};

/** Names of the criteria that count on a scale that nobody fixed and that other cables or labels would move. */
export const looseScales = (criteria: readonly CriterionFound[]): string[] =>
  criteria
    .filter((criterion) => criterion.weight > 0 && !criterion.fixed && !ownEnds(criterion))
    .map(({ name }) => name.split(',')[0]!.toLowerCase());

/** `The scales of price and resistance follow from the claimed sizes or the field, and would move with them.` */
export function looseSentence(names: readonly string[]): string {
  const one = names.length === 1;
  return `The scale${one ? '' : 's'} of ${andList(names)} follow${one ? 's' : ''} from the claimed sizes or the field, and would move with them.`;
}
