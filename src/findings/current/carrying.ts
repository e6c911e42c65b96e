import { cellNumber } from '../../journal/cellQuantity.ts';
import {
  calibrateLoss,
  ELSEWHERE_LOSS_U,
  FELLOW_LOSS_U,
  MODEL_LOSS_U,
} from '../../methods/current/thermal/calibrate.ts';
import { type HeatedCable, inOpenAir } from '../../methods/current/thermal/run.ts';
import { carryingCurrent } from '../../methods/current/thermal/steady.ts';
import type { Trial } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import { measuredOfLn } from '../flex/lnFigure.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Warning } from '../schema.ts';
import type { CurrentCable } from '../shapes/current.ts';
import type { TestResult } from './heatingTests.ts';

/** The lowest usual rating of a jacket, taken where the label states none: 60 °C, as tables of carrying current begin. */
export const ASSUMED_RATING_C = 60;
/** Surroundings of the tables, °C, unless the plan's settings name others. */
export const USUAL_AMBIENT_C = 30;
/** Name of that setting. */
export const AMBIENT_SETTING = 'amps_ambient_C';

/** What a heating test says of the model: the factor on its loss, with the uncertainty of its logarithm. */
export interface Loss {
  factor: number;
  /** From the test, or of the model as it is; what running elsewhere adds is not in it. */
  u: number;
  by: NonNullable<CurrentCable['carrying']>['calibrated_by'];
}

const UNCALIBRATED: Loss = { factor: 1, u: MODEL_LOSS_U, by: 'nothing' };

/** The loss for a cable without a test of its own: the mean of its fellows' on the same bench, where there are any. */
export function lossByFellows(losses: readonly Loss[]): Loss {
  const own = losses.filter((loss) => loss.by === 'own test');
  if (own.length === 0) return UNCALIBRATED;
  const ln = own.reduce((sum, loss) => sum + Math.log(loss.factor), 0) / own.length;
  const u = Math.hypot(...own.map((loss) => loss.u)) / own.length;
  return { factor: Math.exp(ln), u: Math.hypot(u, FELLOW_LOSS_U), by: 'tests of the trial' };
}

/** The test that speaks for a cable: on the conductor, answered, at the largest current. */
export function speakingTest(tests: readonly TestResult[]): TestResult | null {
  const answered = tests.filter((t) => t.rise !== null);
  return answered.reduce<TestResult | null>(
    (best, t) => (best === null || t.rise!.current > best.rise!.current ? t : best),
    null,
  );
}

/** The model's loss by a cable's own heating test; null where there is none or it does not belong. */
export function lossByTest(
  cable: HeatedCable,
  test: TestResult | null,
  id: string,
): { loss: Loss | null; warnings: Warning[] } {
  if (!test?.rise) return { loss: null, warnings: [] };
  const { value, u, current, ambient } = test.rise;
  try {
    const { lossFactor, u: ln } = calibrateLoss(cable, { current, rise: value, u }, inOpenAir(ambient));
    return { loss: { factor: lossFactor, u: ln, by: 'own test' }, warnings: [] };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const text = `The heating test of ${test.shown.specimen} was left out: ${error.message}.`;
    return { loss: null, warnings: [{ code: 'heating-test-does-not-belong', cable: id, text }] };
  }
}

/** Standard uncertainty of ln(loss) where a cable is run: what a test leaves, and for running elsewhere. */
export const lossDoubt = ({ u, by }: Loss): number => Math.hypot(u, by === 'nothing' ? 0 : ELSEWHERE_LOSS_U);

/** The jacket's rating, K, and whether nobody stated it. */
export function ratingOf({ cable }: CableReadings): { kelvin: number; assumed: boolean } {
  const stated = cable.label.temperature;
  return stated === null
    ? { kelvin: ASSUMED_RATING_C + ZERO_CELSIUS, assumed: true }
    : { kelvin: stated, assumed: false };
}

/** Surroundings for carrying currents, K. */
export function ambientOf(trial: Trial): number {
  const typed = cellNumber(trial.settings[AMBIENT_SETTING] ?? '');
  const celsius = typed.ok ? typed.value.value : USUAL_AMBIENT_C;
  return (celsius > -60 && celsius < 150 ? celsius : USUAL_AMBIENT_C) + ZERO_CELSIUS;
}

/**
 * Carrying current in still air: I goes with √(loss / R), so its relative doubt is half of theirs. The loss is doubted by the
 * test, and for running elsewhere; without a test by the model.
 */
export function carryingOf(
  heated: HeatedCable,
  found: CableFindings,
  readings: CableReadings,
  loss: Loss,
  trial: Trial,
  level: number,
): CurrentCable['carrying'] {
  const ambient = ambientOf(trial);
  const { kelvin: rating, assumed } = ratingOf(readings);
  if (!(rating < heated.metal.meltingPoint)) return null;
  const { current } = carryingCurrent(heated, rating, { ...inOpenAir(ambient), lossFactor: loss.factor });
  const shared = {
    ambient_C: ambient - ZERO_CELSIUS,
    rating_C: rating - ZERO_CELSIUS,
    rating_assumed: assumed,
    calibrated_by: loss.by,
    loss_factor: loss.factor,
    loss_u: lossDoubt(loss),
  };
  const byLoss = lossDoubt(loss);
  const byResistance = found.resistance_20C ? found.resistance_20C.u / found.resistance_20C.value : 0;
  const from = ['resistance', 'outer_diameter', ...(loss.by === 'nothing' ? [] : ['currents'])];
  if (!(current > 0)) return null;
  const measured = measuredOfLn(
    {
      ln: Math.log(current),
      shared: new Map(),
      own: 0.25 * (byLoss ** 2 + byResistance ** 2),
      dof: Number.POSITIVE_INFINITY,
      from,
    },
    'A',
    level,
    1,
    assumed ? `if its jacket bears ${ASSUMED_RATING_C} °C` : undefined,
  );
  return { ...shared, current_A: measured, text: wordsOf(measured.value, shared) };
}

function wordsOf(
  current: number,
  c: Pick<NonNullable<CurrentCable['carrying']>, 'ambient_C' | 'rating_C' | 'rating_assumed' | 'calibrated_by'>,
): string {
  const where = `by itself in still air at ${c.ambient_C.toFixed(0)} °C`;
  const limit = c.rating_assumed
    ? `${c.rating_C.toFixed(0)} °C, the lowest usual rating (none is stated)`
    : `the ${c.rating_C.toFixed(0)} °C that its label states`;
  return `About ${current.toFixed(0)} A ${where} bring the conductor to ${limit}. ${BY[c.calibrated_by]}`;
}

const BY = {
  'own test': 'Set by its own heating test.',
  'tests of the trial': 'Set by the heating tests of other cables on this bench.',
  nothing: 'By the model alone: no heating test was made.',
} as const;
