import { isWide } from '../../../findings/measured.ts';
import type { CableFindings, Measured } from '../../../findings/schema.ts';
import { noBreak } from '../../../report/words/noBreak.ts';
import { awgName, THICKEST_AWG, THINNEST_AWG } from '../../../units/gauge.ts';

/** Sizes are counted 1, 1/0, 2/0 from here on. */
const LEAST_GAUGE_NUMBER = 1;
/** Thickest end of an interval that still reads as a number. */
const THICKEST_END = 0.5;

/**
 * The area whose gauge is a number that can stand with its ±; null where it is told in words. Whether it is wide is told by the
 * area: a gauge has no size of its own, and ± 0.6 at size 2 is no wider than at size 8.
 */
export function gaugeFigure({ conductor_area: area, effective_awg: gauge }: CableFindings): Measured | null {
  if (area === null || gauge === null || isWide(area)) return null;
  return gauge.value >= LEAST_GAUGE_NUMBER && gauge.interval[0] >= THICKEST_END ? area : null;
}

/** A size with a name, as far as sizes go. */
const named = (gauge: number) => awgName(Math.min(THINNEST_AWG, Math.max(THICKEST_AWG, gauge)));

/** The gauge in the trade's words; `not told` where the area is too wide to name one, null where there is no area. */
export function gaugeWords(cable: CableFindings): string | null {
  const { conductor_area: area, effective_awg: gauge, effective_gauge_text: text } = cable;
  if (area !== null && isWide(area)) return 'not told';
  // A single number from an interval that reaches past size 1 would look exact beside those with a ±.
  if (gauge !== null && gauge.value >= LEAST_GAUGE_NUMBER && gaugeFigure(cable) === null)
    return noBreak(`${named(Math.floor(gauge.interval[0]))} to ${named(Math.ceil(gauge.interval[1]))}`);
  return text === null ? null : noBreak(text);
}
