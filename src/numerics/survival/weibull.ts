import { calibratedChance, calibratedLimit } from './calibrated.ts';
import { type CommonShape, fitCommonShape, type ShapeGroup } from './commonShape.ts';
import { failures, type Lifetime, seenAt } from './lifetime.ts';
import { profileEnds } from './profileEnds.ts';

/** z at the median: exp(−e^z) = ½. */
const Z_OF_MEDIAN = Math.log(Math.LN2);

type Groups = readonly (readonly Lifetime[])[];
export const fitWeibull = (groups: Groups): CommonShape | null => fitCommonShape(groups.map((lives) => ({ lives })));
const specimensOf = (groups: Groups): number => groups.reduce((sum, lives) => sum + lives.length, 0);

/** scale = exp(−a/shape): the amount beyond which 1/e of the specimens last. */
export const scaleOf = (fit: CommonShape, group = 0): number => Math.exp(-fit.a[group] / fit.shape);
/** scale · (ln 2)^(1/shape); Infinity for a group in which nothing failed. */
export const medianOf = (fit: CommonShape, group = 0): number => Math.exp((Z_OF_MEDIAN - fit.a[group]) / fit.shape);

/**
 * Interval of the median of one group among groups with one shape, by the profile of the likelihood, calibrated for few specimens:
 * all medians whose w is at most N ln(1 + t²/ν), N specimens of all groups, ν = N − groups. One group alone: its own shape.
 *
 * An end is null where the data set none; of a group in which nothing failed only the lower end is finite.
 */
export function medianInterval(
  groups: Groups,
  fit: CommonShape,
  group: number,
  level: number,
): [number | null, number | null] {
  const specimens = specimensOf(groups);
  const dof = specimens - groups.length;
  if (dof < 1) return [null, null];
  const limit = calibratedLimit(level, specimens, dof);
  const start = { shape: fit.shape };
  const w = (ln: number) => {
    const held = fitCommonShape(
      groups.map((lives, i): ShapeGroup => (i === group ? { lives, shift: ln, heldAt: Z_OF_MEDIAN } : { lives })),
      start,
    );
    return held && 2 * (fit.ln - held.ln);
  };
  if (failures(groups[group]) > 0) return toAmounts(profileEnds(w, Math.log(medianOf(fit, group)), limit));
  // Nothing failed: w falls towards 0 as the median grows, so the lower end is sought from far above.
  const far = Math.log(Math.max(...groups[group].map(seenAt))) + FAR_ABOVE;
  return [toAmounts(profileEnds(w, far, limit))[0], null];
}

/** ln of a factor at which survivors no longer feel where the median lies. */
const FAR_ABOVE = Math.log(1e4);

const toAmounts = (ends: [number | null, number | null]): [number | null, number | null] =>
  ends.map((ln) => (ln === null ? null : Math.exp(ln))) as [number | null, number | null];

/** Two groups told apart under one shape of all groups. */
export interface ShapeComparison {
  /** Median of the first over that of the second; null where nothing of one failed. */
  ratio: number | null;
  interval: [number | null, number | null];
  /** Likelihood ratio of one scale for both, and the calibrated chance of so large a one between equals. */
  w: number;
  p: number;
}

/** Fit with two groups taken as one, the second's lifetimes first multiplied by e^ln. */
function merged(groups: Groups, i: number, j: number, ln: number, start: { shape: number }): CommonShape | null {
  const factor = Math.exp(ln);
  const both = [...groups[i], ...groups[j].map(({ from, until }) => ({ from: from * factor, until: until * factor }))];
  const rest = groups.filter((_, g) => g !== i && g !== j);
  return fitCommonShape([{ lives: both }, ...rest.map((lives) => ({ lives }))], start);
}

/**
 * Chance of so large a difference between groups i and j if their scales were equal, all groups with one shape:
 * F = ν (exp(w/N) − 1) on (1, ν), ν = N − groups. null where nothing failed in either, or too few specimens are left.
 */
export function compareScales(groups: Groups, fit: CommonShape, i: number, j: number): { w: number; p: number } | null {
  const specimens = specimensOf(groups);
  const dof = specimens - groups.length;
  if (dof < 1 || failures(groups[i]) + failures(groups[j]) === 0) return null;
  const one = merged(groups, i, j, 0, fit);
  if (!one) return null;
  const w = Math.max(0, 2 * (fit.ln - one.ln));
  return { w, p: calibratedChance(w, specimens, dof) };
}

/** The same with the ratio of the medians and its interval. The likelihood is one of ln t, so multiplying lifetimes only shifts them. */
export function compareMedians(
  groups: Groups,
  fit: CommonShape,
  i: number,
  j: number,
  level: number,
): ShapeComparison | null {
  const tested = compareScales(groups, fit, i, j);
  if (!tested) return null;
  const specimens = specimensOf(groups);
  const limit = calibratedLimit(level, specimens, specimens - groups.length);
  const w = (ln: number) => {
    const one = merged(groups, i, j, ln, fit);
    return one && 2 * (fit.ln - one.ln);
  };
  const [failedI, failedJ] = [failures(groups[i]) > 0, failures(groups[j]) > 0];
  if (failedI && failedJ) {
    const ln = Math.log(medianOf(fit, i) / medianOf(fit, j));
    return { ...tested, ratio: Math.exp(ln), interval: toAmounts(profileEnds(w, ln, limit)) };
  }
  const far = failedI ? -FAR_ABOVE : FAR_ABOVE;
  const [low, high] = toAmounts(profileEnds(w, far, limit));
  return { ...tested, ratio: null, interval: failedI ? [null, high] : [low, null] };
}

/** Whether the groups may share one shape. */
export interface EqualShapes {
  w: number;
  dof: number;
  p: number;
}

/**
 * Test of one shape for all groups that hold a shape of their own, calibrated as above with ν = N − groups: simulated alarm among
 * equals 5 to 7 %, at three specimens of four groups 8 %. null with fewer than two such groups or no specimen to spare.
 */
export function equalShapes(groups: Groups): EqualShapes | null {
  const own = groups.flatMap((lives) => {
    const fit = fitWeibull([lives]);
    return fit ? [{ lives, ln: fit.ln }] : [];
  });
  const specimens = own.reduce((sum, { lives }) => sum + lives.length, 0);
  const left = specimens - own.length;
  if (own.length < 2 || left < 1) return null;
  const common = fitWeibull(own.map(({ lives }) => lives));
  if (!common) return null;
  const w = Math.max(0, 2 * (own.reduce((sum, { ln }) => sum + ln, 0) - common.ln));
  return { w, dof: own.length - 1, p: calibratedChance(w, specimens, left, own.length - 1) };
}
