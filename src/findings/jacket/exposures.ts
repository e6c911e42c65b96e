import { group } from 'd3-array';
import { meanChange } from '../../methods/jacket/change.ts';
import { mean } from '../../numerics/describe.ts';
import type { Reading, Trial } from '../../trial/trial.ts';
import { SAME_TIME } from '../bench/exposureQuestion.ts';
import { listed } from '../flex/words.ts';
import { withinLimits } from '../measured.ts';
import type { ToolBox } from '../rows/tools.ts';
import type { CableFindings, Measured, Warning } from '../schema.ts';
import type { ExposureChange } from '../shapes/jacket.ts';
import { pieces } from './words.ts';

const QUANTITIES = ['mass_before', 'mass_after', 'diameter_before', 'diameter_after'];
/** One step of a display is a uniform error; a difference has two. */
const TWO_STEPS = Math.sqrt(2 / 12);

export interface ExposuresFound {
  exposures: ExposureChange[];
  warnings: Warning[];
}

/** Readings before and after an exposure, by cable and by set: what the pieces took up, lost or swelled. */
export function exposuresOf(
  trial: Trial,
  tools: ToolBox,
  cables: readonly CableFindings[],
  level: number,
): ExposuresFound {
  const read = trial.readings.filter((r) => r.standing === 'counted' && QUANTITIES.includes(r.quantity));
  const warnings: Warning[] = [];
  const exposures = cables.flatMap((found) => {
    const own = read.filter((r) => r.cable === found.cable);
    return [...group(own, (r) => r.set.trim())].map(([exposure, of]) => {
      const [mass, diameter] = (['mass', 'diameter'] as const).map((what) =>
        changeOf(of, what, tools, level, warnings),
      );
      const n = new Set(of.map((r) => r.specimen)).size;
      const shown = { cable: found.cable, name: found.name, exposure, mass, diameter, pieces: n };
      return { ...shown, text: textOf(shown) };
    });
  });
  return { exposures, warnings };
}

/** Change of one thing: the tool's zero and gain are the same before and after and cancel; its steps do not. */
function changeOf(
  readings: readonly Reading[],
  what: 'mass' | 'diameter',
  tools: ToolBox,
  level: number,
  warnings: Warning[],
): Measured | null {
  const lacking: string[] = [];
  const slips: string[] = [];
  const pairs = [...group(readings, (r) => r.specimen)].flatMap(([specimen, of]) => {
    const [before, after] = ['before', 'after'].map((when) => of.filter((r) => r.quantity === `${what}_${when}`));
    if (before.length > 0 !== after.length > 0) lacking.push(specimen);
    if (before.length === 0 || after.length === 0) return [];
    if ([before, after].some(isApart)) {
      slips.push(specimen);
      return [];
    }
    return [{ before: mean(before.map((r) => r.value)), after: mean(after.map((r) => r.value)) }];
  });
  if (lacking.length > 0)
    warnings.push({
      code: 'exposure-not-paired',
      cable: readings[0].cable,
      text: `${listed(lacking)}: the ${what} was read only before or only after; it takes both to say what changed.`,
    });
  if (slips.length > 0)
    warnings.push({
      code: 'exposure-readings-apart',
      cable: readings[0].cable,
      text: `${listed(slips)}: readings of the ${what} at one time differ too much to be of one piece, so no change is told of it. Strike out the one that is a slip.`,
    });
  if (pairs.length === 0) return null;
  const step = Math.max(...readings.map((r) => Math.max(r.step, tools.toolOf(r).resolution || 0)));
  const change = meanChange(pairs, step * TWO_STEPS, level);
  const found: Measured = {
    value: change.mean,
    unit: '1',
    u: change.u,
    interval: change.interval,
    level,
    from: [`${what}_before`, `${what}_after`],
  };
  // Nothing loses more than all of itself.
  return withinLimits(found, -1);
}

/** Repeats so far apart that one of them is a slip, which their mean would hide. */
function isApart(repeats: readonly Reading[]): boolean {
  const values = repeats.map((r) => r.value);
  return Math.max(...values) > SAME_TIME * Math.min(...values);
}

const percent = (x: number) => `${(100 * Math.abs(x)).toFixed(1)} %`;

function said(what: string, m: Measured | null): string {
  if (!m) return '';
  const [low, high] = m.interval;
  if (low <= 0 && high >= 0) return `no change of ${what} is shown (${m.value < 0 ? '−' : '+'}${percent(m.value)})`;
  return `${what} ${m.value > 0 ? 'grew' : 'fell'} by ${percent(m.value)} (${percent(m.value > 0 ? low : high)} to ${percent(m.value > 0 ? high : low)})`;
}

function textOf({ name, exposure, mass, diameter, pieces: n }: Omit<ExposureChange, 'text'>): string {
  const parts = [said('mass', mass), said('diameter', diameter)].filter((part) => part !== '');
  if (parts.length === 0) return '';
  return `${name}${exposure === '' ? '' : `, ${exposure}`}, ${pieces(n)}: ${parts.join('; ')}.`;
}
