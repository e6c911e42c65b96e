import { group } from 'd3-array';
import { mean } from '../../numerics/describe.ts';
import { type RepeatVariance, typeA } from '../../numerics/typeA.ts';
import type { ErrorLimit, Reading, Trial } from '../../trial/trial.ts';
import { usualLimit } from '../../trial/usualLimits.ts';
import { findUnit } from '../../units/unit.ts';
import type { Tool, ToolBox } from '../rows/tools.ts';

/** m/s². CGPM 1901: standard gravity, by definition. */
export const STANDARD_GRAVITY = 9.80665;
/** Gravity runs from 9.780 m/s² at the equator to 9.832 at the poles (WGS 84): ±0.27 % about the standard. From memory. */
export const GRAVITY_HALF_WIDTH = 0.0027;
const ROOT_THREE = Math.sqrt(3);

export const BEND_QUANTITIES: ReadonlySet<string> = new Set([
  'overhang',
  'tip_drop',
  'chord_angle',
  'coil_turns',
  'coil_diameter',
  'push_force',
  'push_deflection',
  'push_span',
  'spring_back',
]);

/** Mean of repeats with the variance of that mean and the limit of error of their tool, SI. */
export interface MeanReading {
  quantity: string;
  value: number;
  variance: number;
  dof: number;
  tool: Tool;
  step: number;
  readings: Reading[];
}

/**
 * Counted bending readings of a trial, their scatter pooled over the trial by tool and quantity (see numerics/typeA.ts).
 * Repeats are readings of one piece, set, quantity and position.
 */
export class BendReadings {
  readonly all: Reading[];
  private readonly pools = new Map<string, RepeatVariance>();
  private readonly tools: ToolBox;
  private readonly weighsForce: ReadonlySet<string>;

  constructor(trial: Trial, tools: ToolBox) {
    this.tools = tools;
    this.all = trial.readings.filter((r) => r.standing === 'counted' && BEND_QUANTITIES.has(r.quantity));
    this.weighsForce = new Set(
      trial.instruments.filter((i) => findUnit(i.row.unit ?? '')?.dimension === 'mass').map((i) => i.instrument),
    );
    for (const [key, readings] of group(this.all, (r) => this.poolOf(r))) {
      const groups = [...group(readings, (r) => `${r.specimen}\n${r.set}\n${r.position}`).values()];
      const resolution = Math.max(...readings.map((r) => this.stepOf(r)));
      this.pools.set(key, typeA({ groups: groups.map((g) => g.map((r) => r.value)), resolution }));
    }
  }

  private poolOf(r: Reading): string {
    return `${this.toolOf(r).id}\n${r.quantity}`;
  }

  private stepOf(r: Reading): number {
    return Math.max(r.step, this.toolOf(r).resolution || 0);
  }

  /** The tool of a reading; a scale that pushes counts newtons. */
  toolOf(r: Reading): Tool {
    const tool = this.tools.toolOf(r);
    if (r.quantity !== 'push_force') return tool;
    if (r.instrument === null) {
      const kitchen = usualLimit('kitchen scale', r.step / STANDARD_GRAVITY);
      return kitchen
        ? { ...tool, id: 'usual kitchen scale', name: 'kitchen scale', limit: inNewtons(kitchen.limit) }
        : tool;
    }
    if (!this.weighsForce.has(r.instrument)) return tool;
    return { ...tool, resolution: tool.resolution * STANDARD_GRAVITY, limit: inNewtons(tool.limit) };
  }

  /** Mean of some repeats; null for none. Repeats by several tools count as by the first. */
  meanOf(readings: readonly Reading[]): MeanReading | null {
    if (readings.length === 0) return null;
    const [first] = readings;
    const tool = this.toolOf(first);
    const pooled = this.pools.get(this.poolOf(first));
    const step = Math.max(...readings.map((r) => this.stepOf(r)));
    const n = readings.length;
    // Repeats that all fall on one step say nothing about where within it the truth lies.
    const floor = readings.every((r) => r.value === first.value) ? (step * step) / 12 : 0;
    return {
      quantity: first.quantity,
      value: mean(readings.map((r) => r.value)),
      variance: Math.max((pooled?.variance ?? 0) / n, floor),
      dof: pooled?.dof ?? Number.POSITIVE_INFINITY,
      tool,
      step,
      readings: [...readings],
    };
  }
}

const inNewtons = (limit: ErrorLimit): ErrorLimit => ({ ...limit, absolute: limit.absolute * STANDARD_GRAVITY });

/**
 * What a tool's limit does to ln y, where ∂ ln y/∂(reading) = slope: its fixed part and its percentage, each a uniform error
 * common to all readings of that quantity by that tool. Errors of one rule on two quantities are taken as independent.
 */
export function limitEffects(reading: MeanReading, slope: number): [string, number][] {
  const { tool, quantity, value } = reading;
  const effects: [string, number][] = [];
  if (tool.limit.absolute > 0)
    effects.push([`${tool.id} zero on ${quantity}`, (slope * tool.limit.absolute) / ROOT_THREE]);
  if (tool.limit.fraction > 0)
    effects.push([`${tool.id} gain on ${quantity}`, (slope * value * tool.limit.fraction) / ROOT_THREE]);
  return effects;
}

/** Mean temperature of readings in K; null when none notes one. */
export function meanTemperature(readings: readonly Reading[]): number | null {
  const noted = readings.flatMap((r) => (r.temperature === null ? [] : [r.temperature]));
  return noted.length > 0 ? mean(noted) : null;
}
