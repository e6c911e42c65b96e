/** What a heating test by hand is told before the current comes on, and whether it has come to its stop. */
import { typedNumber } from './typedNumber.ts';

export interface HeatingRun {
  specimen: string;
  current: string;
  ambient: string;
  /** °C at which it is stopped, chosen before the start. */
  stop: string;
  /** ms of the clock when the current came on; empty before. */
  started: string;
  /** s by which its times stand behind an earlier test of the piece. */
  shift: string;
}

/** What is missing before the current may come on, in words; empty when nothing. */
export function missingBefore({ specimen, current, stop, ambient }: HeatingRun): string[] {
  const missing: string[] = [];
  if (specimen === '') missing.push('which piece is under current');
  if (!(typedNumber(current) > 0)) missing.push('a current above 0 A');
  const at = typedNumber(stop);
  if (!Number.isFinite(at)) missing.push('the temperature at which you stop');
  else if (at <= (Number.isFinite(typedNumber(ambient)) ? typedNumber(ambient) : 0))
    missing.push('a stop temperature above the surroundings');
  else if (at > MOST_STOP) missing.push(`a stop temperature of ${MOST_STOP} °C at most`);
  return missing;
}

/** °C: beyond this most jackets soften or smoke. Common practice, no source. */
const MOST_STOP = 150;

/** Whether the thermometer has come to the stop that was chosen. */
export const isAtStop = (run: HeatingRun, celsius: number): boolean => celsius >= typedNumber(run.stop);
