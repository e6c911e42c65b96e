/** Two invented benches: each tool's limit of error as its box would print it, its display step and its repeatability. */
import type { Draws } from './random.ts';
import { type Row, row, shown } from './tables.ts';

export interface Tool {
  kind: string;
  unit: string;
  resolution: number;
  /** Limit of error: ±(offset + gain · reading), in `unit`. */
  offsetLimit: number;
  gainLimit: number;
  /** Standard deviation of one reading against the next: a part in `unit` and a part of the reading. */
  scatter: number;
  relativeScatter: number;
}

export type ToolName = 'scale' | 'rule' | 'tape' | 'meter' | 'strand-gauge' | 'thermometer';
export type Bench = Readonly<Record<ToolName, Tool>>;

function tool(
  kind: string,
  unit: string,
  resolution: number,
  limit: [number, number],
  scatter: [number, number],
): Tool {
  const [offsetLimit, gainLimit] = limit;
  return { kind, unit, resolution, offsetLimit, gainLimit, scatter: scatter[0], relativeScatter: scatter[1] };
}

const SHARED = {
  rule: tool('steel rule', 'mm', 0.5, [0.5, 0], [0.2, 0]),
  tape: tool('tape', 'mm', 1, [1, 0], [0.3, 0]),
  thermometer: tool('thermometer in the strands', 'C', 0.1, [2, 0], [0.1, 0]),
};

/** Careful hobby tools. */
export const BENCH_A: Bench = {
  ...SHARED,
  scale: tool('pocket scale', 'g', 0.01, [0.03, 0], [0.006, 0]),
  meter: tool('four-wire meter', 'mohm', 0.001, [0.002, 0.005], [0.0003, 0.0005]),
  'strand-gauge': tool('micrometer', 'mm', 0.001, [0.004, 0], [0.001, 0]),
};

/** What most garages hold. */
export const BENCH_B: Bench = {
  ...SHARED,
  scale: tool('kitchen scale', 'g', 1, [1, 0.005], [0.3, 0]),
  meter: tool('four-wire meter', 'mohm', 0.01, [0.01, 0.01], [0.002, 0.001]),
  'strand-gauge': tool('digital caliper', 'mm', 0.01, [0.03, 0], [0.005, 0]),
};

export type Benches = 'A' | 'B';
export const BENCHES: Readonly<Record<Benches, Bench>> = { A: BENCH_A, B: BENCH_B };

export function benchRows(bench: Bench): Row[] {
  return Object.entries(bench).map(([instrument, each]) =>
    row({
      instrument,
      kind: each.kind,
      resolution: each.resolution,
      max_error: each.offsetLimit,
      max_error_percent: each.gainLimit === 0 ? null : each.gainLimit * 100,
      unit: each.unit,
    }),
  );
}

/** Reads a true value in the tool's unit: the text on its display. */
export type ReadTool = (name: ToolName, truth: number) => string;

/** One steady error per tool, uniform within its limits and kept for the whole lot; each reading scatters and is rounded. */
export function takeTools(bench: Bench, draws: Draws): ReadTool {
  const steady = new Map<ToolName, { offset: number; gain: number }>();
  for (const [name, { offsetLimit, gainLimit }] of Object.entries(bench) as [ToolName, Tool][]) {
    steady.set(name, {
      offset: draws.between(-offsetLimit, offsetLimit),
      gain: draws.between(-gainLimit, gainLimit),
    });
  }
  return (name, truth) => {
    const { scatter, relativeScatter, resolution } = bench[name];
    const { offset, gain } = steady.get(name)!;
    const spread = Math.hypot(scatter, relativeScatter * truth);
    return shown(truth * (1 + gain) + offset + draws.scatter(spread), resolution);
  };
}
