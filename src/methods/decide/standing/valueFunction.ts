/**
 * What a figure is worth, from 0 to 1, by two fixed anchors in the figure's own unit.
 *
 * - `linear`: 0 at `worst`, 1 at `best`, and on beyond both.
 * - `flat`: the same between them, and no more than 1 nor less than 0 beyond: enough is enough.
 * - `threshold`: 1 from `best` on, 0 short of it.
 *
 * `best` below `worst` means that less is better.
 */
export interface ValueFunction {
  shape: 'linear' | 'flat' | 'threshold';
  worst: number;
  best: number;
}

/**
 * The worth of a figure on its scale; the scale never follows the field of cables, so taking a cable away changes no other's worth.
 *
 * @example worthOf({ shape: 'flat', worst: 0.7, best: 1 }, 0.85) // 0.5
 */
export function worthOf({ shape, worst, best }: ValueFunction, x: number): number {
  const share = (x - worst) / (best - worst);
  if (shape === 'threshold') return (best > worst ? x >= best : x <= best) ? 1 : 0;
  return shape === 'flat' ? Math.min(1, Math.max(0, share)) : share;
}

/** True when more of the figure is better. */
export const moreIsBetter = ({ worst, best }: ValueFunction): boolean => best > worst;

/**
 * What an unknown figure may be worth: anything between the two ends; reached or not, as likely, for a threshold.
 *
 * @param drawn evenly between 0 and 1
 */
export const unknownWorth = ({ shape }: ValueFunction, drawn: number): number =>
  shape === 'threshold' ? Math.round(drawn) : drawn;
