import { jacketArea, type Surroundings } from '../thermal/run.ts';
import { steadyTemperature } from '../thermal/steady.ts';
import { type Corner, ohmsAt, pathOhms } from './path.ts';
import type { RunCable, RunQuestion } from './question.ts';

/** Everything that flows in a run at one supply voltage and one end of every doubt. */
export interface Flow {
  /** A in the whole run, at the steady load and at the peak. */
  steady: number;
  peak: number;
  /** A, the constant current that heats as much, in each of the runs side by side. */
  heating: number;
  /** K: in the long run, and at the end of a peak. */
  temperature: number;
  hottest: number;
  /** V lost between supply and load at the peak, and left at the load. */
  lost: number;
  atLoad: number;
  lostSteady: number;
  /** W made into heat on the way, on average. */
  watts: number;
}

/** Why there is no flow: the load asks for more than can come through, or the cable has no steady temperature below melting. */
export type NoFlow = 'not enough volts' | 'melts';

/** Half of a 95 % interval in standard uncertainties. */
const NINETY_FIVE = 1.959964;
/** Rounds between current, temperature and resistance; they part by less than 0.02 K then. */
const MOST_ROUNDS = 12;
const SETTLED = 0.02;
/** s: how fast a heavy cable follows, where nothing else is known; a peak shorter than this warms it only in part. */
export const usualTimeConstant = ({ heated }: RunCable): number => {
  // The jacket lies between hot and cold, and warms by half.
  const held = heated.metalVolume * heated.metal.heatCapacity + (jacketArea(heated) / 2) * heated.jacket.heatCapacity;
  // About 12 W/(m² K) by convection and radiation near 60 °C: see the reference case of the thermal model.
  return held / (Math.PI * heated.outerDiameter * 12);
};

/** A that a load draws through R from V: the load's volts fall by what the way takes. NaN when the way lets too little through. */
export function currentOf(amount: number, { load }: RunQuestion, volts: number, ohms: number): number {
  if (load.kind === 'amps') return amount * ohms < volts ? amount : Number.NaN;
  return currentOfPower(amount / load.efficiency, volts, ohms);
}

/** A that so many watts at the load draw through R from V: I = 2P / (V + √(V² − 4PR)), the larger root for the load's volts. NaN for none. */
export function currentOfPower(watts: number, volts: number, ohms: number): number {
  const left = volts * volts - 4 * watts * ohms;
  return left < 0 ? Number.NaN : (2 * watts) / (volts + Math.sqrt(left));
}

/** The surroundings of one end of every doubt: little loss goes with much resistance, as the careful side. */
export function surroundingsAt(q: RunQuestion, cable: RunCable, corner: Corner, runs: number): Surroundings {
  const sign = corner === 'value' ? 0 : corner === 'high' ? -1 : 1;
  return {
    ...q.surroundings,
    bundle: q.surroundings.bundle * runs,
    lossFactor: cable.loss.factor * Math.exp(sign * NINETY_FIVE * cable.loss.u),
  };
}

/** Which end of the doubts, how many runs side by side, and what was there when volts were measured. */
export interface FlowAt {
  corner: Corner;
  runs: number;
  installed: RunCable | null;
  /** K from which the rounds begin: a run that was just settled nearby. */
  near?: number;
}

/** Currents, volts and temperature of a run, settled against each other. */
export function flowOf(
  q: RunQuestion,
  cable: RunCable,
  volts: number,
  { corner, runs, installed, near }: FlowAt,
): Flow | NoFlow {
  const path = pathOhms(q, cable, corner, runs, installed);
  const source = q.supply.ohms[corner];
  const around = surroundingsAt(q, cable, corner, runs);
  const heated = { ...cable.heated, resistance20: cable.ohmsPerMetre[corner] };
  const { steady: amount, peak } = q.load;
  let kelvin = near ?? q.surroundings.ambient;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const ohms = ohmsAt(path, kelvin);
    const steady = amount === 0 ? 0 : currentOf(amount, q, volts, ohms + source);
    const atPeak = peak ? currentOf(peak.amount, q, volts, ohms + source) : steady;
    if (Number.isNaN(steady) || Number.isNaN(atPeak)) return 'not enough volts';
    const share = peak?.share ?? 0;
    const heating = Math.sqrt(share * atPeak ** 2 + (1 - share) * steady ** 2) / runs;
    const found = steadyTemperature(heated, heating, around);
    if (found === null) return 'melts';
    const settled = Math.abs(found.conductor - kelvin) < SETTLED;
    kelvin = found.conductor;
    if (!settled && round < MOST_ROUNDS - 1) continue;
    return {
      steady,
      peak: atPeak,
      heating,
      temperature: kelvin,
      hottest: hottestOf(kelvin, heating, atPeak / runs),
      lost: atPeak * ohms,
      lostSteady: steady * ohms,
      atLoad: volts - atPeak * (ohms + source),
      watts: (heating * runs) ** 2 * ohms,
    };
  }
  return 'melts';

  /** A peak warms by what it would in the long run, as far as its time allows. */
  function hottestOf(mean: number, heating: number, peakEach: number): number {
    if (!peak || peakEach <= heating) return mean;
    const atPeak = steadyTemperature(heated, peakEach, around);
    const limit = atPeak?.conductor ?? cable.heated.metal.meltingPoint;
    return mean + (limit - mean) * -Math.expm1(-peak.seconds / usualTimeConstant(cable));
  }
}
