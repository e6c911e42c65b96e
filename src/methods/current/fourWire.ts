import { studentTQuantile } from '../../numerics/distributions.ts';
import { leastSquares } from '../../numerics/leastSquares.ts';
import { lineThroughOrigin, straightLine } from '../../numerics/regression.ts';
import { ALUMINIUM_RESISTIVITY, COPPER_RESISTIVITY } from '../metal/constants.ts';

/** One voltage with its current, taken together. V, A; the sign is the polarity. */
export interface FourWirePoint {
  current: number;
  voltage: number;
}

export interface FourWire {
  /** Ω, as the current goes to zero where heating was seen, else the slope of V on I. */
  resistance: number;
  /** Standard uncertainty from the scatter about the line, Ω; null where too few points leave none. */
  u: number | null;
  dof: number;
  /** Voltage without current, V: what two metals at two temperatures make; null where only one polarity or level was taken. */
  emf: number | null;
  emfU: number | null;
  /** By how much the resistance rose from no current to the largest, as a share; null where no bend was seen. */
  warmed: number | null;
  /** 'line' | 'line with heating' | 'two polarities' | 'one level' */
  way: string;
  points: number;
  /** Largest current taken, A. */
  largest: number;
}

/** A bend this sure, two-sided, is taken for heating of the wire by the test itself. */
const BEND_LEVEL = 0.99;
/** Levels of |I| from which a bend can be told from a line. */
const LEVELS_FOR_BEND = 3;
/** Two currents nearer than this, as a share, are one level. */
const ONE_LEVEL = 0.02;

function levelsOf(magnitudes: readonly number[]): number {
  const sorted = [...magnitudes].sort((a, b) => a - b);
  return sorted.filter((m, i) => i === 0 || m > sorted[i - 1] * (1 + ONE_LEVEL)).length;
}

/**
 * Resistance by four wires from voltages at several currents: the slope of V on I, so that a voltage which is there without
 * current (two metals at two temperatures) stays in the intercept. Where V bends with I³ beyond doubt the test warmed the
 * wire, R(I) = R(1 + c I²), and the slope at no current is given.
 *
 * Not for readings whose clamps were moved in between: those scatter by more than a line can tell.
 *
 * @throws RangeError for no points, a current of 0, or a resistance that does not come out above zero.
 */
export function fourWire(points: readonly FourWirePoint[]): FourWire {
  if (points.length === 0) throw new RangeError('a four-wire resistance needs at least one voltage with its current');
  for (const { current, voltage } of points) {
    if (!Number.isFinite(current) || !Number.isFinite(voltage))
      throw new RangeError(`voltage and current are numbers, got ${voltage} V and ${current} A`);
    if (current === 0) throw new RangeError('a current of 0 A says nothing of a resistance');
  }
  const found = solved(points);
  if (!(found.resistance > 0))
    throw new RangeError(
      `the voltage falls where the current rises (${(1e3 * found.resistance).toPrecision(3)} mΩ): voltage and current change places or one lead is turned round`,
    );
  return found;
}

function solved(points: readonly FourWirePoint[]): FourWire {
  const x = points.map((p) => p.current);
  const y = points.map((p) => p.voltage);
  const magnitudes = x.map(Math.abs);
  const levels = levelsOf(magnitudes);
  const bothWays = x.some((i) => i > 0) && x.some((i) => i < 0);
  const shared = { points: points.length, largest: Math.max(...magnitudes) };
  if (!bothWays && levels < 2) {
    const many = points.length > 1 ? lineThroughOrigin(x, y) : null;
    return {
      ...shared,
      resistance: many?.slope ?? y[0] / x[0],
      u: many?.slopeError ?? null,
      dof: many?.dof ?? 0,
      emf: null,
      emfU: null,
      warmed: null,
      way: 'one level',
    };
  }
  if (points.length === 2) {
    const resistance = (y[0] - y[1]) / (x[0] - x[1]);
    const emf = y[0] - resistance * x[0];
    return { ...shared, resistance, u: null, dof: 0, emf, emfU: null, warmed: null, way: 'two polarities' };
  }
  if (levels >= LEVELS_FOR_BEND && points.length >= LEVELS_FOR_BEND + 2) {
    const bent = withBend(x, y, shared.largest);
    if (bent) return { ...shared, ...bent };
  }
  const line = straightLine(x, y);
  return {
    ...shared,
    resistance: line.slope,
    u: line.slopeError,
    dof: line.dof,
    emf: line.intercept,
    emfU: line.interceptError,
    warmed: null,
    way: 'line',
  };
}

/** V = e + R I + R c I³, in currents scaled by the largest; null where the last term is not beyond doubt or not heating. */
function withBend(
  x: readonly number[],
  y: readonly number[],
  largest: number,
): Omit<FourWire, 'points' | 'largest'> | null {
  const fit = leastSquares(
    x.map((i) => [1, i / largest, (i / largest) ** 3]),
    y,
  );
  const [emf, slope, bend] = fit.coefficients;
  const factor = studentTQuantile((1 + BEND_LEVEL) / 2, fit.dof);
  const sure = bend > factor * fit.errors[2] && slope > 0 && bend > Number.EPSILON * slope;
  if (!sure) return null;
  return {
    resistance: slope / largest,
    u: fit.errors[1] / largest,
    dof: fit.dof,
    emf,
    emfU: fit.errors[0],
    warmed: bend / slope,
    way: 'line with heating',
  };
}

/** Where a resistance per metre lies between what any conductor of that area could have. */
export type Plausibility = 'plausible' | 'too high' | 'too low';

/** Ω·m of the best copper without lay, less 3 %; and of aluminium with the longest lay and 12 % besides. Common practice, no source. */
const LEAST_RESISTIVITY = COPPER_RESISTIVITY * 0.97;
const MOST_RESISTIVITY = ALUMINIUM_RESISTIVITY * 1.07 * 1.12;
/** A label, or a mass taken for copper, may be off by so much either way before the reading is doubted rather than it. */
const AREA_DOUBT = 0.35;

/**
 * Whether a resistance per metre can belong to a conductor of about this area, whatever of the usual metals it is. Above: two
 * wires, or clamps that do not hold all strands. Below: the distance or the current is not what was noted.
 *
 * @param perMetre Ω/m at about 20 °C; @param area m², claimed or weighed.
 */
export function plausibleResistance(perMetre: number, area: number): Plausibility {
  if (perMetre > MOST_RESISTIVITY / (area * (1 - AREA_DOUBT))) return 'too high';
  if (perMetre < LEAST_RESISTIVITY / (area * (1 + AREA_DOUBT))) return 'too low';
  return 'plausible';
}
