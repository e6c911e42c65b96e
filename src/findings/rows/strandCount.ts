import { group } from 'd3-array';
import { mean, sampleStandardDeviation } from '../../numerics/describe.ts';
import { typeA } from '../../numerics/typeA.ts';
import type { Reading } from '../../trial/trial.ts';
import { type CableGroups, doubt } from './cableGroups.ts';

/** How many strands a cable has, as a number with doubt: counting hundreds of strands is a measurement too. */
export interface StrandCount {
  value: number;
  /** Standard uncertainty, strands. */
  sd: number;
  dof: number;
  how: 'counted whole' | 'bundles × strands in one bundle' | 'by weight';
  quantity: string;
  readings: string[];
}

/** Up to so many strands a person counts without a slip. Common practice, no source. */
const COUNTED_WITHOUT_SLIP = 60;
/** One count of many strands may be off by 1 %, uniform. Common practice, no source. */
const SLIP = 0.01;
/** Standard deviation of strands from bundle to bundle, relative, before they are counted. Common practice, no source. */
const BUNDLE_VARIATION = 0.015;
/** The lengths of strands cut together differ by this much, relative standard deviation. Common practice, no source. */
const STRAND_LENGTH_VARIATION = 0.005;

const ROOT_THREE = Math.sqrt(3);
const slipSd = (n: number) => (n > COUNTED_WITHOUT_SLIP ? (SLIP * n) / ROOT_THREE : 0);
const ids = (readings: readonly Reading[]) => readings.map((r) => r.reading);

function countedReadings(groups: CableGroups, quantity: string): Reading[] {
  return groups.of(quantity).flatMap((g) => g.readings);
}

function countedWhole(groups: CableGroups): StrandCount | null {
  const readings = countedReadings(groups, 'strand_count');
  if (readings.length === 0) return null;
  const values = readings.map((r) => r.value);
  const value = mean(values);
  const n = values.length;
  const spread = n > 1 ? sampleStandardDeviation(values) / Math.sqrt(n) : 0;
  // Counts that agree may share a slip (a bundle left out of each), so agreement narrows the doubt only so far.
  const sd = Math.hypot(spread, slipSd(value) / Math.sqrt(n));
  return { value, sd, dof: Infinity, how: 'counted whole', quantity: 'strand_count', readings: ids(readings) };
}

/** Bundles of bundles are recorded level by level: each `set` of bundle_count is one level, and levels multiply. */
function bundleTotal(readings: readonly Reading[]): number {
  const levels = group(readings, (r) => r.set);
  return [...levels.values()].reduce((product, level) => product * mean(level.map((r) => r.value)), 1);
}

/** Variance of strands from bundle to bundle: the counted ones, leaning on the usual variation with 4 degrees of freedom. */
function bundleVariance(values: readonly number[], each: number) {
  return typeA({ groups: [values], resolution: 1, repeatability: BUNDLE_VARIATION * each });
}

const isCentre = (r: Reading) => /cent(re|er)|middle|core/i.test(r.position);

function fromBundles(groups: CableGroups): StrandCount | null {
  const bundles = countedReadings(groups, 'bundle_count');
  const inBundle = countedReadings(groups, 'strands_in_bundle');
  const around = inBundle.filter((r) => !isCentre(r));
  if (bundles.length === 0 || around.length === 0) return null;
  const centre = inBundle.filter(isCentre).map((r) => r.value);
  const total = bundleTotal(bundles);
  const outer = centre.length ? total - 1 : total;
  const values = around.map((r) => r.value);
  const each = mean(values);
  const value = outer * each + (centre.length ? mean(centre) : 0);
  const m = values.length;
  const bundle = bundleVariance(values, each);
  const perBundle = Math.sqrt(bundle.variance);
  // Bundles that were counted are known; only the uncounted ones are foretold from them.
  const uncounted = Math.max(outer - m, 0);
  const sdOfMean = perBundle / Math.sqrt(m);
  const sd = Math.hypot(uncounted * sdOfMean, Math.sqrt(uncounted) * perBundle, outer * slipSd(each));
  return {
    value,
    sd,
    dof: uncounted > 0 ? bundle.dof : Infinity,
    how: 'bundles × strands in one bundle',
    quantity: 'strands_in_bundle',
    readings: ids([...bundles, ...inBundle]),
  };
}

/** Whole conductor ÷ counted strands of the same piece: the length drops out. */
function byWeight(groups: CableGroups): StrandCount | null {
  for (const specimen of groups.specimensWith('strand_sample_mass')) {
    const sample = groups.on(specimen, 'strand_sample_mass');
    const count = groups.on(specimen, 'strand_sample_count');
    const conductor = groups.on(specimen, 'conductor_mass');
    if (!sample || !count || !conductor || groups.on(specimen, 'strand_sample_length')) continue;
    const value = (conductor.mean / sample.mean) * count.mean;
    const relative = Math.hypot(
      doubt(sample) / sample.mean / ROOT_THREE,
      doubt(conductor) / conductor.mean / ROOT_THREE,
      STRAND_LENGTH_VARIATION,
    );
    return {
      value,
      sd: relative * value,
      dof: Infinity,
      how: 'by weight',
      quantity: 'strand_sample_mass',
      readings: ids([...sample.readings, ...count.readings, ...conductor.readings]),
    };
  }
  return null;
}

/** The strand count by the best way that was recorded: counted whole, else bundle by bundle, else by weight. */
export function strandCount(groups: CableGroups): StrandCount | null {
  return countedWhole(groups) ?? fromBundles(groups) ?? byWeight(groups);
}
