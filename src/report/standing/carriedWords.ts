import type { CriterionFound } from '../../findings/shapes/decide.ts';
import { scaleSentence } from './criterionWords.ts';

/** The job that speaks of what a cable carries. */
export const CARRYING_JOB = 'cheapest that carries it';

/** What that job takes for carrying, in amperes, and where it is changed: it asks for no least current by itself. */
export function carriedText(criteria: readonly CriterionFound[]): string {
  const current = criteria.find(({ id }) => id === 'current');
  if (current === undefined)
    return 'No current is known that these cables carry, so amperes do not count here: they come from the place Amps.';
  const scale = scaleSentence(current);
  if (current.shape === 'threshold')
    return `Current: ${scale.charAt(0).toLowerCase()}${scale.slice(1)} The figure stands under Criteria, at Current it carries.`;
  return `No least current is asked for. What a cable carries is ${scale.charAt(0).toLowerCase()}${scale.slice(1)} For a current that must be carried, set Current it carries to “all or nothing” under Criteria and type the amperes.`;
}
