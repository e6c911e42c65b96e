import { ZERO_CELSIUS } from '../../../units/dimension.ts';
import type { ConductorMetal } from '../materials.ts';
import type { HeatedCable } from '../thermal/run.ts';

/** A figure with the ends between which it lies. */
export interface Between {
  value: number;
  low: number;
  high: number;
}

export const exactly = (value: number): Between => ({ value, low: value, high: value });

/** What draws the current. Watts are at the load's terminals after `efficiency`; a load in watts draws more as its volts fall. */
export interface RunLoad {
  kind: 'watts' | 'amps';
  steady: number;
  /** Peak and the share of the time that it lasts; null: always steady. */
  peak: { amount: number; share: number; seconds: number } | null;
  /** Share of the electrical power that the stated watts are; 1 when they are electrical. */
  efficiency: number;
}

/** How the current comes back. Ω, m. */
export type RunReturn =
  | { kind: 'same cable'; length: number }
  | { kind: 'other cable'; length: number; ohmsPerMetre: number; metal: ConductorMetal }
  | { kind: 'body measured'; ohms: number }
  | { kind: 'body unknown'; low: number; high: number };

/** Lugs, fuse holder, blocks: Ω each. */
export interface RunJoint {
  name: string;
  count: number;
  ohms: number;
}

/** Volts lost under load as read on the installation itself: they beat the model. V, A. */
export interface MeasuredDrop {
  plus: number;
  minus: number;
  current: number;
  /** Id of the cable that was there then; null when it is none of the candidates. */
  cable: string | null;
}

export interface RunQuestion {
  /** V. `charging` is with the engine or charger running; null when there is none. Ω of source and its leads. */
  supply: { resting: number; charging: number | null; ohms: Between; direct: boolean };
  load: RunLoad;
  /** m, one way out. */
  length: number;
  back: RunReturn;
  joints: readonly RunJoint[];
  /** K, cables touching that carry the same, carpet or trim (m, W/(m K)). */
  surroundings: { ambient: number; bundle: number; layer: { thickness: number; conductivity: number } | null };
  /** Share of the supply's volts that may be lost on the way. */
  allowedDrop: number;
  measured: MeasuredDrop | null;
}

/** A cable that might be run. */
export interface RunCable {
  id: string;
  name: string;
  /** False for a nominal size that stands for reference. */
  measured: boolean;
  /** Its resistance is the middle figure of `ohmsPerMetre`. */
  heated: HeatedCable;
  /** Ω/m at 20 °C, the ends of its interval. */
  ohmsPerMetre: Between;
  /** m², metal. */
  area: number;
  /** K, and whether nobody stated it. */
  rating: number;
  ratingAssumed: boolean;
  /** Factor on the loss, and the standard uncertainty of its logarithm where the cable is run. */
  loss: { factor: number; u: number };
  /** kg/m of the whole cable, and money per metre; null when not known. */
  massPerMetre: number | null;
  price: { perMetre: number; currency: string } | null;
}

/** Above this, V DC, other rules begin (extra-low voltage without ripple, IEC 61140): the check answers nothing there. */
export const MOST_VOLTS = 60;

/** Above this, A, a figure is a slip of the hand: no battery of these volts drives it. Common practice, no source. */
export const MOST_AMPS = 10_000;

/** What is taken where nobody says. Common practice, no source; page and terminal take the same, and say it. */
export const USUAL_RUN = {
  /** V at rest. */
  resting: 12.6,
  /** K, the warmest that a cable in a vehicle usually lies in. */
  ambient: 40 + ZERO_CELSIUS,
  /** V that may be lost, at the peak of the load where it has one. */
  drop: 0.5,
  /** Output over input of a load whose watts are its output. */
  efficiency: 0.9,
  peakSeconds: 30,
  peakShare: 0.2,
} as const;

/** V while charging a bank of lead batteries, for each 12 V of it; in steps of 6 V. Common practice, no source. */
const CHARGING_OF_TWELVE = 14.2;
const RESTING_OF_TWELVE = 12.6;

/** V at which a supply of so many V at rest is usually charged: 14.2 for 12 to 13 V, 28.4 for 24 V; NaN for what is no supply. */
export function usualCharging(resting: number): number {
  if (!(resting > 0)) return Number.NaN;
  const sixes = Math.max(1, Math.round((2 * resting) / RESTING_OF_TWELVE));
  return Number(((sixes * CHARGING_OF_TWELVE) / 2).toFixed(1));
}

/** Joints as usually met, mΩ each. Common practice, no source; each can be changed. */
export const USUAL_JOINTS: readonly { name: string; milliohms: number; count: number }[] = [
  { name: 'crimped lug, bolted down', milliohms: 0.1, count: 4 },
  { name: 'fuse holder with its fuse', milliohms: 0.5, count: 1 },
  { name: 'distribution block', milliohms: 0.2, count: 0 },
  { name: 'battery clamp', milliohms: 0.15, count: 1 },
  { name: 'switch or breaker', milliohms: 0.4, count: 0 },
];

/** Ω of the joints that a run usually has. */
export const usualJointOhms = (): number =>
  USUAL_JOINTS.reduce((sum, { milliohms, count }) => sum + (count * milliohms) / 1000, 0);

/** A vehicle's body and its two bolts where nobody measured, mΩ. Common practice, no source: measure it. */
export const UNKNOWN_BODY: { low: number; high: number } = { low: 0.0003, high: 0.005 };

/** Ω of a 12 V battery with its clamps: 2 to 8 mΩ, from memory of battery sheets. */
export const USUAL_SUPPLY_OHMS: Between = { value: 0.005, low: 0.002, high: 0.008 };

const number = (x: number) => Number.isFinite(x);

/**
 * Why a run cannot be checked, each in one sentence; empty when it can. What is refused outright (mains, more than 60 V)
 * comes first.
 */
export function runProblems(q: RunQuestion): string[] {
  const problems: string[] = [];
  const say = (when: boolean, text: string) => {
    if (when) problems.push(text);
  };
  const { supply, load } = q;
  const most = Math.max(supply.resting, supply.charging ?? 0);
  say(
    !supply.direct,
    'This check is for direct current from batteries and their chargers; nothing fed from the mains is answered.',
  );
  say(
    most > MOST_VOLTS,
    `${most} V is above ${MOST_VOLTS} V DC: other rules begin there, and this check does not answer.`,
  );
  say(
    !(supply.resting > 0) || !number(supply.resting),
    `The supply has ${supply.resting} V; volts above zero are needed.`,
  );
  say(
    supply.charging !== null && !(supply.charging > 0),
    `The charging supply has ${supply.charging} V; volts above zero are needed.`,
  );
  say(
    supply.charging !== null && supply.charging > 0 && supply.charging < supply.resting,
    `Charging at ${supply.charging} V lies below the ${supply.resting} V at rest: the two are swapped, or one is mistyped.`,
  );
  say(
    !(supply.ohms.low >= 0 && supply.ohms.high >= supply.ohms.low),
    'The resistance of the supply is no range from zero up.',
  );
  say(!(q.length > 0) || !number(q.length), `The run is ${q.length} m long; a length above zero is needed.`);
  say(!(load.steady >= 0) || !number(load.steady), `The steady load is ${load.steady}; it cannot be negative.`);
  say(load.steady === 0 && load.peak === null, 'The load is 0: nothing flows, and there is nothing to check.');
  say(
    Math.max(load.steady, load.peak?.amount ?? 0) > MOST_AMPS * (load.kind === 'amps' ? 1 : supply.resting),
    `More than ${MOST_AMPS} A flow in no such cable: look at the figure and its unit.`,
  );
  say(!(load.efficiency > 0 && load.efficiency <= 1), 'An efficiency lies above 0 and is 1 at most.');
  if (load.peak) {
    say(!(load.peak.amount >= load.steady), 'The peak lies below the steady load: the two are swapped.');
    say(!(load.peak.share >= 0 && load.peak.share <= 1), 'The share of the time at peak lies between 0 and 1.');
    say(!(load.peak.seconds > 0), 'A peak lasts some seconds.');
  }
  say(!(q.allowedDrop > 0 && q.allowedDrop < 1), 'The drop that is allowed is a share between 0 and 1 of the supply.');
  say(
    !(q.surroundings.ambient > 173 && q.surroundings.ambient < 473),
    'The surroundings are not between −100 and 200 °C.',
  );
  say(
    q.joints.some((j) => !(j.ohms >= 0 && Number.isInteger(j.count) && j.count >= 0)),
    'A joint has ohms from zero up, and joints are counted in whole numbers.',
  );
  return [...problems, ...returnProblems(q.back), ...measuredProblems(q.measured)];
}

function returnProblems(back: RunReturn): string[] {
  if (back.kind === 'body measured') return back.ohms >= 0 ? [] : ['The body has a resistance from zero up.'];
  if (back.kind === 'body unknown')
    return back.low >= 0 && back.high >= back.low ? [] : ['The body has no range of ohms from low to high.'];
  if (!(back.length > 0)) return [`The way back is ${back.length} m long; a length above zero is needed.`];
  return back.kind === 'other cable' && !(back.ohmsPerMetre > 0)
    ? ['The cable of the way back has a resistance per metre above zero.']
    : [];
}

function measuredProblems(measured: MeasuredDrop | null): string[] {
  if (!measured) return [];
  const { current, plus, minus } = measured;
  if (!(current > 0)) return ['The volts lost were measured at 0 A: without a current nothing is lost.'];
  return plus >= 0 && minus >= 0
    ? []
    : ['Volts lost on the way cannot be negative: the leads of the meter are swapped.'];
}
