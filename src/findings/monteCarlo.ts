import type { JointAssay } from '../methods/assay/joint.ts';
import { type MonteCarloAssay, monteCarloAssay } from '../methods/assay/monteCarlo.ts';
import { numericalTolerance } from '../numerics/monteCarlo.ts';
import { wholeText } from '../units/wholeText.ts';
import type { CableFindings, Measured } from './schema.ts';

export interface DrawOptions {
  seed: string;
  level: number;
  draws: number | 'auto';
  onBlock?: (draws: number) => boolean;
}

/** More cables than this are drawn only when a number of draws is asked for. */
export const MOST_DRAWN_UNASKED = 24;

/** Draws for all assayed cables at once, or null when none were asked for. */
export function drawsFor(
  joint: JointAssay,
  findings: ReadonlyMap<string, CableFindings>,
  o: DrawOptions,
): MonteCarloAssay | null {
  if (o.draws === 0 || joint.cables.length === 0) return null;
  if (o.draws === 'auto' && joint.cables.length > MOST_DRAWN_UNASKED) return null;
  const copperRequired = joint.cables.map((c) => {
    const held = findings.get(c.cable.cable)?.claims.find((claim) => claim.reading === 'copper held');
    return held?.required ? held.required * 1e-6 : null;
  });
  return monteCarloAssay(joint, { ...o, copperRequired });
}

/** One digit of agreement: the closed form may stand by so much of its u from the draws (JCGM 101:2008, 8.1, one significant digit). */
const AGREE_DIGITS = 1;

/** What two nearly equal figures differ by has lost the digits in which engines still agree; so many decimals of it are kept. */
const DIFFERENCE_DECIMALS = 5;

/** One cable's draws beside its closed form; null where the closed form speaks only "if copper" and the draws of every metal. */
export function monteCarloOf(
  drawn: MonteCarloAssay | null,
  at: number,
  area: Measured | null,
): CableFindings['monte_carlo'] {
  if (!drawn || !area) return null;
  const d = drawn.cables[at];
  const held = { draws: drawn.draws, stable: drawn.stable, copper_held_probability: d.copperHeld };
  if (area.condition) return { ...held, conductor_area: null, difference_in_u: 0, agrees: true };
  const mm2 = 1e6;
  const conductor_area: Measured = {
    value: d.mean * mm2,
    unit: 'mm2',
    u: d.u * mm2,
    interval: [d.interval[0] * mm2, d.interval[1] * mm2],
    level: area.level,
    from: area.from,
  };
  const differences = [
    conductor_area.value - area.value,
    conductor_area.interval[0] - area.interval[0],
    conductor_area.interval[1] - area.interval[1],
  ].map(Math.abs);
  const largest = Math.max(...differences);
  return {
    ...held,
    conductor_area,
    difference_in_u: Number((largest / area.u).toFixed(DIFFERENCE_DECIMALS)),
    agrees: largest <= numericalTolerance(area.u, AGREE_DIGITS),
  };
}

/** What the draws say of the closed form, for people; null when nothing was drawn. */
export function drawsSentence(drawn: MonteCarloAssay | null, cables: readonly CableFindings[]): string | null {
  if (!drawn) return null;
  const apart = cables.filter((c) => c.monte_carlo && !c.monte_carlo.agrees).map((c) => c.name);
  const count = wholeText(drawn.draws);
  const settled = drawn.stable ? '' : ' Their last digit had not come to rest.';
  if (apart.length === 0) return `Held against ${count} random draws, the figures agree.${settled}`;
  return `Held against ${count} random draws, the figures of ${apart.join(', ')} differ in the shown digits: take the wider interval.${settled}`;
}
