import type { FourWirePoint } from '../../methods/current/fourWire.ts';
import type { Reading } from '../../trial/trial.ts';
import type { CableGroups } from './cableGroups.ts';
import type { Group } from './groups.ts';

/** Voltages and currents of one piece that share their sets, with the tools that read them. */
export interface TestPairs {
  points: FourWirePoint[];
  /** The voltage of each point, and the current beside it. */
  pairs: { voltage: Reading; current: Reading }[];
  volts: Group;
  amps: Group;
  /** m between the contacts; voltages over another distance are brought to this one. null when a pair does not say it. */
  atLength: number | null;
}

/** Turned round by its word where its signs do not say so. */
const isReverse = (r: Reading) => /\brev(erse|ersed)?\b|\bback/i.test(r.position);

/**
 * Voltage and current of one set as a point whose signs say the polarity. The sign of the voltage counts: a current is often
 * noted without one. A pair noted twice positive but called reverse is turned round.
 */
function pointOf(voltage: Reading, current: Reading): FourWirePoint {
  const turned = voltage.value > 0 && current.value > 0 && (isReverse(voltage) || isReverse(current)) ? -1 : 1;
  return {
    voltage: turned * voltage.value,
    current: turned * Math.sign(voltage.value) * Math.abs(current.value),
  };
}

/** The pairs of a piece; null when there are none. A current of 0 makes no pair. */
export function testPairsOf(specimen: string, groups: CableGroups): TestPairs | null {
  const volts = groups.on(specimen, 'test_voltage');
  const amps = groups.on(specimen, 'test_current');
  if (!volts || !amps) return null;
  const pairs = volts.readings.flatMap((voltage) => {
    const current = amps.readings.find((a) => a.set === voltage.set);
    return current && current.value !== 0 && voltage.value !== 0 ? [{ voltage, current }] : [];
  });
  if (pairs.length === 0) return null;
  const lengths = pairs.map(({ voltage, current }) => voltage.atLength ?? current.atLength);
  const [atLength] = lengths;
  const known = lengths.every((length) => length !== null);
  const points = pairs.map(({ voltage, current }, i) => {
    const point = pointOf(voltage, current);
    return known ? { ...point, voltage: (point.voltage * atLength!) / lengths[i]! } : point;
  });
  return { points, pairs, volts, amps, atLength: known ? atLength : null };
}

/** Whether a voltage that is there without current, or a zero that is off, stays out of the slope. */
export const offsetsCancel = (way: string): boolean => way !== 'one level';

/** What the tools' limits may do to the resistance, as a share: gains always, fixed parts where nothing cancels them. */
export function toolShare({ volts, amps, points }: TestPairs, way: string): number {
  const gains = volts.tool.limit.fraction + amps.tool.limit.fraction;
  const largest = (of: (p: FourWirePoint) => number) => Math.max(...points.map((p) => Math.abs(of(p))));
  const currentZero = amps.tool.limit.absolute / largest((p) => p.current);
  if (offsetsCancel(way)) return gains + currentZero;
  return gains + currentZero + volts.tool.limit.absolute / largest((p) => p.voltage);
}

/** Variance of rounding to the displays' steps, relative: what is left where too few points show a scatter. */
function stepVariance({ pairs, volts, amps }: TestPairs): number {
  const relative = pairs.map(
    ({ voltage, current }) =>
      (Math.max(voltage.step, volts.tool.resolution || 0) / voltage.value) ** 2 +
      (Math.max(current.step, amps.tool.resolution || 0) / current.value) ** 2,
  );
  return relative.reduce((a, b) => a + b, 0) / relative.length / 12 / pairs.length;
}

/** Degrees of freedom that the displays' steps count for beside a scatter of few points (see numerics/typeA.ts). */
const PRIOR_DOF = 4;

/** Variance of the resistance by scatter and rounding, Ω², the scatter of few points leaning on the steps. */
export function ownVariance(
  pairs: TestPairs,
  { resistance, u, dof }: { resistance: number; u: number | null; dof: number },
): { variance: number; dof: number } {
  const steps = resistance * resistance * stepVariance(pairs);
  if (u === null) return { variance: steps, dof: Number.POSITIVE_INFINITY };
  const leaning = (PRIOR_DOF * steps + dof * u * u) / (PRIOR_DOF + dof);
  return { variance: Math.max(steps, leaning), dof: PRIOR_DOF + dof };
}
