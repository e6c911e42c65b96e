import { group } from 'd3-array';
import { mean } from '../../numerics/describe.ts';
import { scatterOfEach } from '../../numerics/scatterApart.ts';
import type { Reading, Trial } from '../../trial/trial.ts';
import type { Tool, ToolBox } from './tools.ts';
import { trustedStep } from './trustedStep.ts';

/** Repeats of one quantity on one specimen by one tool. */
export interface Group {
  cable: string;
  specimen: string;
  quantity: string;
  position: string;
  tool: Tool;
  readings: Reading[];
  n: number;
  /** SI */
  mean: number;
  /** SI: the larger of the typed step and the tool's resolution. */
  step: number;
  /** Type A variance of the mean, SI squared, pooled over the trial, with its degrees of freedom. */
  scatter: { variance: number; dof: number };
  /** How many times as widely its repeats scatter as those of other pieces by the same tool; null where they are alike. */
  apart: number | null;
}

/** Positions that part one quantity into different things rather than into repeats of one thing. */
function partingPosition(reading: Reading): string {
  return reading.quantity === 'submerged_mass' ? reading.position : '';
}

/**
 * Counted readings in groups of repeats, with the scatter of each group filled in.
 *
 * Struck and replaced readings are left out; their group knows nothing of them.
 */
export function groupsOf(trial: Trial, tools: ToolBox): Group[] {
  const groups = new Map<string, Group>();
  for (const reading of trial.readings) {
    if (reading.standing !== 'counted') continue;
    const tool = tools.toolOf(reading);
    const position = partingPosition(reading);
    const key = `${reading.specimen}\n${reading.quantity}\n${tool.id}\n${position}`;
    const group = groups.get(key);
    if (group) group.readings.push(reading);
    else
      groups.set(key, {
        cable: reading.cable,
        specimen: reading.specimen,
        quantity: reading.quantity,
        position,
        tool,
        readings: [reading],
        n: 1,
        mean: reading.value,
        step: 0,
        scatter: { variance: 0, dof: Infinity },
        apart: null,
      });
  }
  const list = [...groups.values()];
  for (const g of list) {
    g.n = g.readings.length;
    g.mean = mean(g.readings.map((r) => r.value));
    g.step = trustedStep(g.quantity, Math.max(g.tool.resolution || 0, ...g.readings.map((r) => r.step)));
  }
  fillScatter(list);
  return list;
}

/** Strands differ among themselves in proportion to their size, so their scatter is pooled in proportion too. */
const SCATTERS_WITH_SIZE: ReadonlySet<string> = new Set(['strand_diameter']);

/** A group read to a step so many times that of the usual group was typed carelessly, or is a slip; it says nothing of the others. Ours. */
const CARELESS = 20;

/** The step that the readings of one pool are taken to have: the coarsest, but for such as are far coarser than the usual one. */
function commonStep(steps: readonly number[]): number {
  const sorted = [...steps].sort((a, b) => a - b);
  const usual = sorted[Math.floor((sorted.length - 1) / 2)];
  return usual > 0 ? Math.max(...sorted.filter((step) => step <= CARELESS * usual)) : Math.max(...sorted);
}

/** Pools the scatter of repeats by tool and quantity over the whole trial, but for a group far out of it (see {@link scatterOfEach}). */
function fillScatter(list: readonly Group[]): void {
  const pools = group(list, (g) => `${g.tool.id}\n${g.quantity}`);
  for (const pool of pools.values()) {
    const scaleOf = (g: Group) => (SCATTERS_WITH_SIZE.has(g.quantity) ? Math.abs(g.mean) || 1 : 1);
    const values = pool.map((g) => g.readings.map((r) => r.value / scaleOf(g)));
    const resolution = commonStep(pool.map((g) => g.step / scaleOf(g)));
    const each = scatterOfEach(
      values.map((repeats) => [repeats]),
      resolution,
    );
    pool.forEach((g, i) => {
      const single = each[i];
      // Rounding of a value that always falls on the same step does not average out.
      const onOneStep = values[i].every((v) => v === values[i][0]);
      const coarser = g.step / scaleOf(g) > resolution;
      const floor = onOneStep || coarser ? g.step ** 2 / 12 : 0;
      const variance = (single.variance * scaleOf(g) ** 2) / g.n;
      g.apart = single.apart;
      g.scatter = { variance: Math.max(variance, floor), dof: single.dof };
    });
  }
}
