/** A span of a log under one steady current that began from rest. */
export interface Segment {
  /** Rows: the first under current and the one past the last. */
  from: number;
  to: number;
  /** A, mean over the span. */
  current: number;
  /** Largest distance of a reading from it, as a share. */
  unsteady: number;
  /** s since the first row of the log at which the current was switched on. */
  start: number;
  /** K: how far the cable was from the surroundings before that, by the last rows without current; 0 where there are none. */
  baseline: number;
  /** Whether rows without current just before it show the cable at rest; null where there are no such rows. */
  rested: boolean | null;
  /** K above the baseline at the first row under current. */
  startRise: number;
}

/** Currents within this share of each other are one. Common practice, no source. */
const STEADY = 0.05;
/** Below this share of the largest current of the log it counts as off. */
const OFF = 0.03;
const FEWEST_ROWS = 12;
/** A step this many times the usual one parts two heatings. */
const GAP = 50;

export interface SegmentInput {
  time: ArrayLike<number>;
  current: ArrayLike<number>;
  /** K above the surroundings. */
  rise: ArrayLike<number>;
}

/** The largest current either way, A; 0 where no row holds one. */
export function largestOf(current: ArrayLike<number>): number {
  let largest = 0;
  for (let i = 0; i < current.length; i++) largest = Math.max(largest, Math.abs(current[i]) || 0);
  return largest;
}

/**
 * Steady stretches of a log: rows one after the other whose current stays within 5 % of their mean, cut where it is switched
 * or where the log has a long gap.
 */
export function steadySegments({ time, current, rise }: SegmentInput): Segment[] {
  const n = time.length;
  const largest = largestOf(current);
  if (!(largest > 0)) return [];
  const isOff = (i: number) => !(Math.abs(current[i]) > OFF * largest);
  const step = n > 1 ? (time[n - 1] - time[0]) / (n - 1) : 0;
  const segments: Segment[] = [];
  let i = 0;
  while (i < n) {
    if (isOff(i)) {
      i++;
      continue;
    }
    const from = i;
    let sum = 0;
    while (i < n && !isOff(i)) {
      const mean = i > from ? sum / (i - from) : Math.abs(current[i]);
      const apart = Math.abs(Math.abs(current[i]) - mean) > STEADY * mean;
      if (i > from && (apart || time[i] - time[i - 1] > GAP * step)) break;
      sum += Math.abs(current[i]);
      i++;
    }
    if (i - from >= FEWEST_ROWS) segments.push(told(from, i, sum / (i - from), { time, current, rise }, isOff));
  }
  return segments;
}

function told(
  from: number,
  to: number,
  mean: number,
  { time, current, rise }: SegmentInput,
  isOff: (i: number) => boolean,
): Segment {
  let unsteady = 0;
  for (let k = from; k < to; k++) unsteady = Math.max(unsteady, Math.abs(Math.abs(current[k]) / mean - 1));
  // The last rows before the current came on, as many as ten, tell where the two thermometers stand apart at rest.
  const rest: number[] = [];
  for (let k = from - 1; k >= 0 && rest.length < 10 && isOff(k); k--) if (Number.isFinite(rise[k])) rest.push(rise[k]);
  const restMean = rest.length > 0 ? rest.reduce((a, b) => a + b, 0) / rest.length : 0;
  const warm = Math.abs(restMean) > FARTHEST_REST;
  const baseline = warm ? 0 : restMean;
  const step = to - from > 1 ? (time[to - 1] - time[from]) / (to - from - 1) : 0;
  return {
    from,
    to,
    current: mean,
    unsteady,
    start: switchedOn(from, time, step),
    baseline,
    rested: rest.length > 0 ? !warm : null,
    startRise: rise[from] - baseline,
  };
}

/** A log that begins so few steps after time 0 began with the current: its times count from there. */
const NEAR_ZERO = 10;

/** When the current came on: between the last row without it and the first with it, or at time 0 where the log begins there. */
function switchedOn(from: number, time: ArrayLike<number>, step: number): number {
  if (from === 0) return time[0] >= 0 && time[0] <= NEAR_ZERO * step ? 0 : time[0];
  return Math.max(0.5 * (time[from - 1] + time[from]), time[from] - step);
}

/** Thermometers that agree at rest differ by no more than this, K: beyond it the cable had not cooled. */
const FARTHEST_REST = 3;
