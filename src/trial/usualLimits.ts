/**
 * Limits of error taken when nobody states them, so that a first trial can start. Common practice, no source: what such
 * tools usually promise. Every finding that leans on one says so.
 */
import { quantityNamed } from '../journal/quantities.ts';
import type { Dimension } from '../units/dimension.ts';
import type { ErrorLimit } from './trial.ts';

interface UsualTool {
  kind: string;
  /** Recognised in what people call the tool; the first row that fits counts. */
  called: RegExp;
  /** Smallest step of such a tool, SI unit of what it reads; null: as its display. */
  step: number | null;
  absolute: number;
  fraction: number;
  /** Steps of the last digit, added to `absolute`. */
  counts: number;
}

const tool = (
  kind: string,
  called: RegExp,
  step: number | null,
  absolute: number,
  fraction = 0,
  counts = 0,
): UsualTool => ({ kind, called, step, absolute, fraction, counts });

/** Most particular names first. SI: kg, m, Ω, K. */
const USUAL_TOOLS: readonly UsualTool[] = [
  tool('kitchen scale', /kitchen/, 1e-3, 1e-3, 0.005),
  tool('pocket scale', /pocket|jewel|\bscales?\b|balance/, 1e-5, 3e-5, 0.001),
  tool('plastic caliper', /plastic.*calliper|plastic.*caliper/, 1e-4, 2e-4),
  tool('digital caliper', /calliper|caliper|vernier/, 1e-5, 3e-5),
  tool('micrometer', /micrometer|micrometre|\bmic\b/, 1e-6, 4e-6),
  tool('steel rule', /\brule\b|ruler/, 5e-4, 5e-4),
  tool('tape', /tape/, 1e-3, 1e-3, 0.001),
  tool('four-wire meter', /four.?wire|4.?wire|kelvin|milli.?ohm|micro.?ohm/, null, 0, 0.01, 5),
  tool('shunt and millivolts', /shunt/, null, 0, 0.01),
  tool('clamp ammeter', /clamp/, null, 0, 0.03, 5),
  tool('infrared thermometer', /infra.?red|\bir\b/, 0.1, 3),
  tool('thermometer', /thermo|\bprobe\b/, 0.1, 1),
];

export interface UsualLimit {
  kind: string;
  limit: ErrorLimit;
}

/**
 * The usual limit of error for a tool by what it is called, or null when no such tool is known.
 *
 * @param kind as typed: 'Pocket scale', '4-wire milliohm meter'
 * @param resolution one step of the tool, SI unit of what it reads: used where the limit is counted in steps
 */
export function usualLimit(kind: string, resolution: number): UsualLimit | null {
  const called = kind.toLowerCase();
  const found = USUAL_TOOLS.find((usual) => usual.called.test(called));
  return found ? { kind: found.kind, limit: limitOf(found, resolution) } : null;
}

function limitOf(usual: UsualTool, resolution: number): ErrorLimit {
  return { absolute: usual.absolute + usual.counts * resolution, fraction: usual.fraction, assumed: true };
}

/** Every kind of tool that has a usual limit, the most particular name first. */
export function usualKinds(): string[] {
  return USUAL_TOOLS.map((usual) => usual.kind);
}

/**
 * An ordinary multimeter reads its own leads and contacts, tenths of an ohm, where heavy cable has milliohms: two wires
 * cannot settle this size, whatever the box promises.
 */
export function isOrdinaryMultimeter(kind: string): boolean {
  return /multi.?meter|\bdmm\b/i.test(kind) && !/four.?wire|4.?wire|kelvin|milli.?ohm|micro.?ohm/i.test(kind);
}

/** From this step up, kg, a scale is taken for a kitchen scale. Half a gram lies between the two kinds of display. */
const KITCHEN_STEP = 5e-4;
/** Up to this length, m, a steel rule reaches; beyond it a tape was used. */
const RULE_REACH = 0.4;
/** From this step down, m, a strand diameter was read off a micrometer. */
const MICROMETER_STEP = 1e-6;
/** So that a step that is a rounding error above its decimal still counts as that decimal. */
const NEARLY = 1.000001;

const ROUND_QUANTITIES: ReadonlySet<string> = new Set([
  'outer_diameter',
  'conductor_diameter',
  'wall_thickness',
  'diameter_before',
  'diameter_after',
]);
const FINE_QUANTITIES: ReadonlySet<string> = new Set(['strand_diameter']);

/** The kind of tool usually taken for a reading of this dimension, or null when there is none. */
function usualKind(quantity: string, dimension: Dimension | null, step: number, value: number): string | null {
  if (dimension === 'mass') return step * NEARLY >= KITCHEN_STEP ? 'kitchen scale' : 'pocket scale';
  if (FINE_QUANTITIES.has(quantity)) return step <= MICROMETER_STEP * NEARLY ? 'micrometer' : 'digital caliper';
  if (ROUND_QUANTITIES.has(quantity)) return 'digital caliper';
  if (dimension === 'length') return value <= RULE_REACH ? 'steel rule' : 'tape';
  if (dimension === 'resistance') return 'four-wire meter';
  if (dimension === 'voltage' || dimension === 'current') return 'shunt and millivolts';
  if (dimension === 'temperature') return 'thermometer';
  return null;
}

/**
 * The tool taken for a reading that names none, with its usual limit: judged by what was measured, how finely, and how
 * much. null for counts and for what no usual tool reads.
 *
 * @param quantity a name from the closed list, or 'temperature'
 * @param step one step of the typed digits, SI
 * @param value the reading, SI: tells a rule from a tape
 */
export function usualInstrumentFor(quantity: string, step: number, value = 0): UsualLimit | null {
  const dimension = quantity === 'temperature' ? 'temperature' : (quantityNamed(quantity)?.dimension ?? null);
  const kind = usualKind(quantity, dimension, step, value);
  return kind === null ? null : usualLimit(kind, step);
}

/** The usual limit for a tool of unknown kind, by what its unit measures; null when no usual tool reads that. */
export function usualLimitForDimension(dimension: Dimension, resolution: number): UsualLimit | null {
  const kind = usualKind('', dimension, resolution, 0);
  return kind === null ? null : usualLimit(kind, resolution);
}

/** The usual step of a kind of tool, SI; null when it is as the display shows. */
export function usualStep(kind: string): number | null {
  return USUAL_TOOLS.find((usual) => usual.kind === kind)?.step ?? null;
}
