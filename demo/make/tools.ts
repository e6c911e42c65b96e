/** The club's invented tools: what stands on their boxes, and how an invented specimen of each reads. */
import type { Draws } from '../../test/simulate/random.ts';
import { type Row, row, shown } from '../../test/simulate/tables.ts';

interface Tool {
  kind: string;
  unit: string;
  resolution: number;
  maxError: number | null;
  maxErrorPercent: number | null;
  maxErrorCounts: number | null;
  /** Standard deviation of one reading against the next, in `unit`. */
  repeatability: number;
  note: string;
}

export const TOOLS = {
  'pocket-scale': tool('pocket scale', 'g', 0.01, { error: 0.03, percent: 0.1 }, 0.007),
  rule: tool('steel rule', 'mm', 0.5, { error: 0.5 }, 0.2),
  tape: tool('tape', 'mm', 1, { error: 1, percent: 0.1 }, 0.5, 'long lengths only'),
  caliper: tool('digital caliper', 'mm', 0.01, { error: 0.03 }, 0.015),
  micrometer: tool('micrometer', 'mm', 0.001, { error: 0.004 }, 0.001),
  'ohm-meter': tool('four-wire meter', 'mohm', 0.001, { percent: 0.5, counts: 2 }, 0.0006, 'zeroed with clips shorted'),
  thermometer: tool('thermometer in the strands', 'C', 0.1, { error: 1 }, 0.1),
} as const;
export type ToolName = keyof typeof TOOLS;

/** A tool as its box describes it; limits that the box leaves out stay blank. */
function tool(
  kind: string,
  unit: string,
  resolution: number,
  limit: { error?: number; percent?: number; counts?: number },
  repeatability: number,
  note = '',
): Tool {
  const { error = null, percent = null, counts = null } = limit;
  return {
    kind,
    unit,
    resolution,
    maxError: error,
    maxErrorPercent: percent,
    maxErrorCounts: counts,
    repeatability,
    note,
  };
}

export function toolRows(): Row[] {
  return Object.entries(TOOLS).map(([instrument, each]) =>
    row({
      instrument,
      kind: each.kind,
      resolution: each.resolution,
      max_error: each.maxError,
      max_error_percent: each.maxErrorPercent,
      max_error_counts: each.maxErrorCounts,
      unit: each.unit,
      valid_from_C: each.kind === 'four-wire meter' ? 5 : null,
      valid_to_C: each.kind === 'four-wire meter' ? 40 : null,
      note: each.note,
    }),
  );
}

/** One invented specimen of every tool: its own steady error, drawn once and kept for the whole trial. */
export function toolsFrom(draws: Draws): (name: ToolName, truth: number) => string {
  const steady = new Map<string, { offset: number; gain: number }>();
  for (const [name, each] of Object.entries(TOOLS)) {
    const offsetLimit = (each.maxError ?? 0) + (each.maxErrorCounts ?? 0) * each.resolution;
    const gainLimit = (each.maxErrorPercent ?? 0) / 100;
    steady.set(name, {
      offset: draws.between(-offsetLimit, offsetLimit),
      gain: draws.between(-gainLimit, gainLimit),
    });
  }
  return (name, truth) => {
    const { offset, gain } = steady.get(name)!;
    const read = truth * (1 + gain) + offset + draws.scatter(TOOLS[name].repeatability);
    return shown(read, TOOLS[name].resolution);
  };
}
