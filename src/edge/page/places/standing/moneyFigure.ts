import type { Measured } from '../../../../findings/schema.ts';
import { type FigureText, figureText } from '../../../../report/figures.ts';

/** Money with its ±, without the unit that stands in the head of the column. */
export function moneyFigure(m: Measured, times: number): FigureText {
  const scaled = {
    ...m,
    value: m.value * times,
    u: m.u * times,
    interval: [m.interval[0] * times, m.interval[1] * times] as [number, number],
    unit: '1',
  };
  return figureText(scaled);
}
