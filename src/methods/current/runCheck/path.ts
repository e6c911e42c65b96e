import { resistanceFactor } from '../materials.ts';
import type { RunCable, RunQuestion } from './question.ts';

/** Which end of every doubt is looked at. */
export type Corner = 'low' | 'value' | 'high';
export const CORNERS: readonly Corner[] = ['value', 'low', 'high'];

/** Joints may be off by so much of themselves either way. Common practice, no source. */
const JOINT_DOUBT = 0.5;

/** Ohms of a run as a straight function of the conductor's temperature: fixed + alongCable · (1 + α (T − 20 °C)). */
export interface PathOhms {
  /** Joints and a way back that is not this cable. */
  fixed: number;
  /** This cable, out and where it also leads back, at 20 °C. */
  alongCable: number;
  alpha: number;
}

/** Metres of this cable in the run. */
export function metresOfCable(q: RunQuestion): number {
  return q.length + (q.back.kind === 'same cable' ? q.back.length : 0);
}

const doubt = (value: number, share: number, corner: Corner): number =>
  corner === 'value' ? value : value * (corner === 'low' ? 1 - share : 1 + share);

const jointOhms = ({ joints }: RunQuestion): number => joints.reduce((sum, j) => sum + j.count * j.ohms, 0);

/** What is not this cable, by the list of joints and the way back; by measured volts where there are any. */
function fixedOhms(q: RunQuestion, corner: Corner, installed: RunCable | null): number {
  if (q.measured) return measuredFixed(q, installed);
  return doubt(jointOhms(q), JOINT_DOUBT, corner) + backOhms(q, corner);
}

function backOhms({ back, surroundings }: RunQuestion, corner: Corner): number {
  if (back.kind === 'same cable') return 0;
  if (back.kind === 'body measured') return back.ohms;
  if (back.kind === 'other cable')
    return back.length * back.ohmsPerMetre * resistanceFactor(back.metal.alpha, surroundings.ambient + BACK_RISE);
  return corner === 'value' ? Math.sqrt(Math.max(back.low, 1e-6) * back.high) : back[corner];
}

/** A cable that leads back is taken to be so much warmer than its surroundings, K. Common practice, no source. */
const BACK_RISE = 15;

/**
 * From volts lost on either side: what is left of the measured ohms when the cable that was there is taken off. Without knowing
 * that cable the joints' list stands for the plus side.
 */
function measuredFixed(q: RunQuestion, installed: RunCable | null): number {
  const { plus, minus, current } = q.measured!;
  const warm = (c: RunCable) => c.ohmsPerMetre.value * resistanceFactor(c.heated.metal.alpha, q.surroundings.ambient);
  const onPlus = installed ? Math.max(0, plus / current - q.length * warm(installed)) : jointOhms(q);
  const cableBack = q.back.kind === 'same cable' && installed ? q.back.length * warm(installed) : 0;
  return onPlus + Math.max(0, minus / current - cableBack);
}

/** The ohms of a run with this cable, `runs` of them side by side; joints and a way back of another kind are shared by all. */
export function pathOhms(
  q: RunQuestion,
  cable: RunCable,
  corner: Corner,
  runs: number,
  installed: RunCable | null,
): PathOhms {
  return {
    fixed: fixedOhms(q, corner, installed),
    alongCable: (metresOfCable(q) * cable.ohmsPerMetre[corner]) / runs,
    alpha: cable.heated.metal.alpha,
  };
}

export function ohmsAt({ fixed, alongCable, alpha }: PathOhms, kelvin: number): number {
  return fixed + alongCable * resistanceFactor(alpha, kelvin);
}
