/** What nobody stated about a run and was taken as usual, in the words of page, print and terminal. */
import { USUAL_RUN, usualCharging, usualJointOhms } from '../methods/current/runCheck/question.ts';
import { ZERO_CELSIUS } from '../units/dimension.ts';

/** Which answers were left to the usual. */
export interface LeftToUsual {
  peakSeconds: boolean;
  peakShare: boolean;
  efficiency: boolean;
  charging: boolean;
  ambient: boolean;
  drop: boolean;
  joints: boolean;
  body: boolean;
}

/** Each guess in a few words with its figure; only what matters to this load. Common practice, no source. */
export function usualTaken(
  load: { watts: boolean; peak: boolean; resting: number },
  left: Partial<LeftToUsual>,
): string[] {
  const charging = usualCharging(load.resting);
  const guesses: readonly (readonly [boolean | undefined, string])[] = [
    [load.peak && left.peakSeconds, `a peak of ${USUAL_RUN.peakSeconds} s`],
    [load.peak && left.peakShare, `${(100 * USUAL_RUN.peakShare).toFixed(0)} % of the time at the peak`],
    [load.watts && left.efficiency, `an efficiency of ${(100 * USUAL_RUN.efficiency).toFixed(0)} %`],
    [left.charging && Number.isFinite(charging), `${charging} V charging`],
    [left.ambient, `${(USUAL_RUN.ambient - ZERO_CELSIUS).toFixed(0)} °C around it`],
    [left.joints, `joints of ${Number((1000 * usualJointOhms()).toPrecision(3))} mΩ together`],
    [left.body, 'a body between 0.3 and 5 mΩ'],
    [left.drop, `${USUAL_RUN.drop} V that may be lost${load.peak ? ', also at the peak' : ''}`],
  ];
  return guesses.filter(([taken]) => taken).map(([, text]) => text);
}
