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

/** The most that a load asks for, in its own unit: its peak where it has one. */
export const mostAsked = ({ steady, peak }: RunLoad): number => Math.max(steady, peak?.amount ?? 0);

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

/** Above these, m, a length or a layer is a slip of the hand: at so few volts nothing leads so far. Common practice, no source. */
export const MOST_METRES = 1000;
export const MOST_LAYER = 1;

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
