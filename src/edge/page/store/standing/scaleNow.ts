import type { CriterionFound } from '../../../../findings/shapes/decide.ts';
import { readScale } from '../../../../findings/standing/settings.ts';
import { tried } from './standing.ts';

/** Name of the setting that keeps a criterion's scale. */
export const scaleSetting = (id: string): string => `standing_scale_${id}`;

/** Whether another scale of it is tried out on this page. */
export const isTried = ({ id }: CriterionFound): boolean => tried.value.scales[scaleSetting(id)] !== undefined;

/** A criterion on the scale that is tried out now: the order follows a moment later, the curve at once. */
export function scaleNow(criterion: CriterionFound): CriterionFound {
  const scale = readScale(tried.value.scales[scaleSetting(criterion.id)] ?? '');
  return scale === null ? criterion : { ...criterion, ...scale, better: scale.best > scale.worst ? 'more' : 'less' };
}
