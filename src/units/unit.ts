import type { Dimension } from './dimension.ts';
import { type ExactFactor, timesFactor } from './exactFactors.ts';
import { unitKey } from './unitKey.ts';
import { UNIT_TABLE, type UnitRow, VOLUMES } from './unitTable.ts';

/** A unit that people type, and its way into and out of SI. */
export interface Unit {
  /** As printed: `mm²`, `mΩ/m`, `°C`. */
  symbol: string;
  dimension: Dimension;
  toSI(x: number): number;
  fromSI(x: number): number;
  /** A difference or a step: like `toSI` without the offset that temperatures have. */
  stepToSI(x: number): number;
}

function makeUnit(symbol: string, dimension: Dimension, [times, over]: ExactFactor, offset = 0): Unit {
  return {
    symbol,
    dimension,
    toSI: (x) => ((x + offset) * times) / over,
    fromSI: (x) => (x * over) / times - offset,
    stepToSI: (x) => (x * times) / over,
  };
}

const BY_SPELLING: ReadonlyMap<string, UnitRow> = new Map(
  UNIT_TABLE.flatMap((row) => row.spellings.map((spelling) => [spelling, row] as const)),
);

/** A scale shows grams but feels a force: where a force is awaited, a unit of mass means its weight. */
const WEIGHED_FORCE: Readonly<Record<string, string>> = { g: 'gf', kg: 'kgf', lb: 'lbf', oz: 'ozf' };

const PER_LENGTH: Partial<Record<Dimension, Dimension>> = {
  resistance: 'resistance per length',
  mass: 'mass per length',
};

/** `mΩ/m`, `ohm/1000 ft`, `lb/kft`, `g/cm3`: one unit over a length or a volume. */
function findQuotient(key: string): Unit | null {
  const parts = key.split(/\s*\/\s*|\s+per\s+/);
  const above = parts.length === 2 ? BY_SPELLING.get(parts[0]!) : undefined;
  if (above?.offset !== 0) return null;
  const volume = VOLUMES.get(parts[1]!);
  if (volume && above.dimension === 'mass') {
    const factor = timesFactor(above.factor, [volume.factor[1], volume.factor[0]]);
    return makeUnit(`${above.symbol}/${volume.symbol}`, 'density', factor);
  }
  const below = BY_SPELLING.get(parts[1]!);
  const dimension = PER_LENGTH[above.dimension];
  if (!dimension || below?.dimension !== 'length') return null;
  const factor = timesFactor(above.factor, [below.factor[1], below.factor[0]]);
  return makeUnit(`${above.symbol}/${below.symbol}`, dimension, factor);
}

function findAny(key: string): Unit | null {
  const row = BY_SPELLING.get(key);
  return row ? makeUnit(row.symbol, row.dimension, row.factor, row.offset) : findQuotient(key);
}

/** A few spellings mean something else when the kind of reading is known. */
function findInContext(key: string, expected: Dimension): Unit | null {
  if (expected === 'ratio' && (key === '' || key === '1')) return makeUnit('1', 'ratio', [1, 1]);
  const row = BY_SPELLING.get(key);
  const weighed = expected === 'force' && row ? WEIGHED_FORCE[row.symbol] : undefined;
  return weighed ? findAny(weighed) : null;
}

/**
 * The unit that a text names, however it is spelt: `mohm/m`, `mΩ / m`, `MILLIOHM/M`, `sq mm`, `mm²`, `"`, `ohms per 1000 ft`.
 *
 * Returns null when no unit is so called, or when it is of another kind than `expected`. The letter case counts only where
 * it must: `mΩ` is a milliohm, `MΩ` a megohm, and `MV`, `MA` are not understood rather than guessed at. Nothing at all is a
 * count (or a plain ratio where a ratio is expected). AWG is not a unit: see `gauge.ts`.
 */
export function findUnit(text: string, expected?: Dimension): Unit | null {
  const key = unitKey(text);
  if (key === null) return null;
  const unit = (expected && findInContext(key, expected)) ?? findAny(key);
  return unit && (expected === undefined || unit.dimension === expected) ? unit : null;
}
