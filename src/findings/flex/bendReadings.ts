import { group } from 'd3-array';
import { BEND_QUANTITIES } from '../../journal/quantities.ts';
import { mean } from '../../numerics/describe.ts';
import { type ScatterOfOne, scatterOfEach } from '../../numerics/scatterApart.ts';
import type { ErrorLimit, Reading, Trial } from '../../trial/trial.ts';
import { usualLimit } from '../../trial/usualLimits.ts';
import { GRAVITY } from '../../units/exactFactors.ts';
import { findUnit } from '../../units/unit.ts';
import type { Tool, ToolBox } from '../rows/tools.ts';
import { partedByTemperature } from './atTemperature.ts';
import { readingsThatSettleNothing } from './settleNothing.ts';

/** Gravity runs from 9.780 m/s² at the equator to 9.832 at the poles (WGS 84): ±0.27 % about the standard. From memory. */
export const GRAVITY_HALF_WIDTH = 0.0027;
const ROOT_THREE = Math.sqrt(3);

/** Everything that is read by bending. */
export const BENT: ReadonlySet<string> = new Set(BEND_QUANTITIES);

/** Read point by point along a push: what follows is no repeat of what went before. */
const POINTS: ReadonlySet<string> = new Set(['push_force', 'push_deflection']);

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

/** A piece whose repeats scatter so many times as much as those of the others, by one tool. */
export interface ScatterApart {
  cable: string;
  specimen: string;
  quantity: string;
  times: number;
}

/**
 * Counted bending readings of a trial, their scatter pooled over the trial by tool and quantity (see numerics/scatterApart.ts):
 * readings that settle nothing have no part in it, and a piece whose repeats stand far out widens its own figure alone.
 * Repeats are readings of one piece, set, quantity, position and temperature.
 */
export class BendReadings {
  readonly all: Reading[];
  /** Pieces whose repeats scatter far more than the others'. */
  readonly apart: ScatterApart[] = [];
  /** By tool and quantity, then by piece. */
  private readonly pools = new Map<string, Map<string, ScatterOfOne>>();
  private readonly tools: ToolBox;
  private readonly weighsForce: ReadonlySet<string>;

  constructor(trial: Trial, tools: ToolBox) {
    this.tools = tools;
    this.all = trial.readings.filter((r) => r.standing === 'counted' && BENT.has(r.quantity));
    this.weighsForce = new Set(
      trial.instruments.filter((i) => findUnit(i.row.unit ?? '')?.dimension === 'mass').map((i) => i.instrument),
    );
    const left = readingsThatSettleNothing(this.all, trial);
    for (const [key, readings] of group(this.all, (r) => this.poolOf(r)))
      this.pools.set(key, this.pooled(readings, left));
  }

  /** Scatter of each piece's repeats by one tool. */
  private pooled(readings: readonly Reading[], left: ReadonlySet<Reading>): Map<string, ScatterOfOne> {
    const pieces = [...group(readings, (r) => r.specimen)];
    const repeats = pieces.map(([, own]) =>
      [...group(own, (r) => (POINTS.has(r.quantity) ? r.reading : `${r.set}\n${r.position}`)).values()]
        .flatMap(partedByTemperature)
        .map((some) => some.filter((r) => !left.has(r)).map((r) => r.value)),
    );
    const each = scatterOfEach(repeats, Math.max(...readings.map((r) => this.stepOf(r))));
    each.forEach(({ apart }, i) => {
      if (apart !== null)
        this.apart.push({
          cable: pieces[i][1][0].cable,
          specimen: pieces[i][0],
          quantity: readings[0].quantity,
          times: apart,
        });
    });
    return new Map(pieces.map(([specimen], i) => [specimen, each[i]]));
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
      const kitchen = usualLimit('kitchen scale', r.step / GRAVITY);
      return kitchen
        ? { ...tool, id: 'usual kitchen scale', name: 'kitchen scale', limit: inNewtons(kitchen.limit) }
        : tool;
    }
    if (!this.weighsForce.has(r.instrument)) return tool;
    return { ...tool, resolution: tool.resolution * GRAVITY, limit: inNewtons(tool.limit) };
  }

  /** Mean of some repeats; null for none. Repeats by several tools count as by the first. */
  meanOf(readings: readonly Reading[]): MeanReading | null {
    if (readings.length === 0) return null;
    const [first] = readings;
    const tool = this.toolOf(first);
    const pooled = this.pools.get(this.poolOf(first))?.get(first.specimen);
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

const inNewtons = (limit: ErrorLimit): ErrorLimit => ({ ...limit, absolute: limit.absolute * GRAVITY });

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
