import { mean } from '../../numerics/describe.ts';
import type { Reading } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';

/** Results farther apart than this are not at one temperature, K: stiffness of soft jackets moves by several per cent. */
export const ONE_TEMPERATURE = 3;
const ROUNDING = 1e-6;

const noted = (readings: readonly Reading[]): number[] =>
  readings.flatMap((r) => (r.temperature === null ? [] : [r.temperature]));

/** Mean temperature of readings in K; null when none notes one. */
export function meanTemperature(readings: readonly Reading[]): number | null {
  const temperatures = noted(readings);
  return temperatures.length > 0 ? mean(temperatures) : null;
}

/** Coldest and warmest temperature noted, °C; null when none is. */
export function temperatureRange(readings: readonly Reading[]): [number, number] | null {
  return rangeOf(noted(readings).map((kelvin) => kelvin - ZERO_CELSIUS));
}

/** The ends of some figures; null for none. */
export function rangeOf(figures: readonly number[]): [number, number] | null {
  return figures.length === 0 ? null : [Math.min(...figures), Math.max(...figures)];
}

/**
 * Things sorted by temperature and cut where the next is more than 3 K from the first of its group: what is brought together is
 * at one temperature. Things without one make a group of their own, the last.
 */
export function groupedByTemperature<T extends { temperature: number | null }>(things: readonly T[]): T[][] {
  const sorted = things.filter((t) => t.temperature !== null).sort((a, b) => a.temperature! - b.temperature!);
  const groups: T[][] = [];
  for (const thing of sorted) {
    const group = groups[groups.length - 1];
    if (group && thing.temperature! - group[0].temperature! <= ONE_TEMPERATURE + ROUNDING) group.push(thing);
    else groups.push([thing]);
  }
  const bare = things.filter((t) => t.temperature === null);
  if (bare.length > 0) groups.push(bare);
  return groups;
}

/**
 * Readings of one set parted by temperature, those that note none with the first: a droop read again on a warmer day is another
 * droop, though it stands under the same name. Readings keep their order within each part.
 */
export function partedByTemperature(readings: readonly Reading[]): Reading[][] {
  const groups = groupedByTemperature(readings);
  if (groups.length < 2) return [[...readings]];
  const warm = groups.filter((g) => g[0].temperature !== null);
  const bare = groups.find((g) => g[0].temperature === null) ?? [];
  const parts = warm.map((g, i) => new Set(i === 0 ? [...g, ...bare] : g));
  return parts.map((part) => readings.filter((r) => part.has(r)));
}
