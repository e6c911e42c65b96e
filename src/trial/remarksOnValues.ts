import { median } from '../numerics/describe.ts';
import { typedText } from '../units/typedText.ts';
import { pieceSigns, quantityHead } from './plainWords.ts';
import { remarksOnWidths } from './remarksOnWidths.ts';
import type { Reading, Remark, Trial } from './trial.ts';

/** Quantities whose repeats should agree. Loads, deflections and test currents differ on purpose. */
const REPEATABLE: ReadonlySet<string> = new Set([
  'specimen_length',
  'conductor_length',
  'specimen_mass',
  'conductor_mass',
  'jacket_mass',
  'outer_diameter',
  'conductor_diameter',
  'strand_count',
  'bundle_count',
  'strands_in_bundle',
  'strand_diameter',
  'wall_thickness',
  'lay_length',
  'resistance',
]);
const MASSES: ReadonlySet<string> = new Set(['specimen_mass', 'conductor_mass', 'jacket_mass']);

/** Grams in an ounce avoirdupois (28.349523125), to the digits that matter here. */
export const GRAMS_IN_OUNCE = 28.35;
/** How near to that the ratio must lie: readings of one piece, and readings of pieces that differ by up to a third. */
const OUNCES_WITHIN = { sameKindOfPiece: 1.35, samePiece: 1.15 };
/** A slip of the decimal point, give or take what honest pieces differ by: 10 / 1.6 or more. */
const TEN_TIMES = 6;

/** Readings of one quantity on one piece, brought to a figure that may be compared with other pieces. */
interface Group {
  piece: string;
  /** Code on the tag of the piece, where it has one. */
  sign?: string;
  cable: string;
  quantity: string;
  readings: Reading[];
  /** One per reading, per length where the quantity grows with it. */
  figures: number[];
  least: number;
  most: number;
}

const ratioBetween = (a: number, b: number): number => Math.max(a / b, b / a);

function looksLikeOunces(figure: number, fellows: number, quantity: string, within: number): boolean {
  return MASSES.has(quantity) && ratioBetween(figure * GRAMS_IN_OUNCE, fellows) <= within;
}

/** Groups by piece and quantity, made as they come up and listed in that order. */
class ByQuantity {
  readonly #pieces = new Map<string, Map<string, Group>>();
  readonly #made: Group[];

  constructor(made: Group[]) {
    this.#made = made;
  }

  groupOf({ specimen, cable, quantity }: Reading): Group {
    let quantities = this.#pieces.get(specimen);
    if (!quantities) {
      quantities = new Map();
      this.#pieces.set(specimen, quantities);
    }
    let group = quantities.get(quantity);
    if (!group) {
      group = { piece: specimen, cable, quantity, readings: [], figures: [], least: Number.POSITIVE_INFINITY, most: 0 };
      quantities.set(quantity, group);
      this.#made.push(group);
    }
    return group;
  }
}

function groupsOf(trial: Trial): Group[] {
  const lengths = new Map(trial.specimens.map((piece) => [piece.specimen, piece.cutLength]));
  const groups: Group[] = [];
  const byPiece = { perLength: new ByQuantity(groups), plain: new ByQuantity(groups) };
  for (const reading of trial.readings) {
    const { specimen, quantity } = reading;
    if (reading.standing !== 'counted' || !REPEATABLE.has(quantity) || !(reading.value > 0)) continue;
    const scales = MASSES.has(quantity);
    const over = scales ? (lengths.get(specimen) ?? null) : quantity === 'resistance' ? reading.atLength : null;
    const group = (over === null ? byPiece.plain : byPiece.perLength).groupOf(reading);
    group.readings.push(reading);
    const figure = over === null ? reading.value : reading.value / over;
    group.figures.push(figure);
    if (figure < group.least) group.least = figure;
    if (figure > group.most) group.most = figure;
  }
  return groups;
}

function typed(reading: Reading): string {
  return typedText(reading.row.value ?? '', reading.row.unit ?? '');
}

/** `Mass of the conductor of KR`. */
const called = ({ quantity, piece, sign }: Group) => `${quantityHead(quantity)} of ${sign ?? piece}`;

function remark(ounces: boolean, group: Group, readings: readonly Reading[], fellows: string): Remark {
  const found = [...new Set(readings.map(typed))].join(', ');
  return {
    code: ounces ? 'looks-like-ounces' : 'ten-times-its-fellows',
    cable: group.cable || null,
    readings: readings.map((reading) => reading.reading),
    text: ounces
      ? `${called(group)} is ${found}, which fits ${fellows} if it was in ounces: check the unit.`
      : `${called(group)} is ${found}, far from ${fellows}: check the decimal point and the unit.`,
  };
}

/** Repeats on one piece that do not agree with each other. Of two that differ, either may be the wrong one. */
function withinPiece(group: Group): Remark[] {
  if (group.figures.length < 2 || group.most / group.least < TEN_TIMES) return [];
  if (group.figures.length === 2) {
    const [first, second] = group.figures as [number, number];
    if (ratioBetween(first, second) < TEN_TIMES) return [];
    const small = Math.min(first, second);
    const ounces = looksLikeOunces(small, Math.max(first, second), group.quantity, OUNCES_WITHIN.samePiece);
    return [remark(ounces, group, group.readings, 'one another')];
  }
  const middle = median(group.figures);
  return group.readings.flatMap((reading, i) => {
    if (ratioBetween(group.figures[i]!, middle) < TEN_TIMES) return [];
    const ounces = looksLikeOunces(group.figures[i]!, middle, group.quantity, OUNCES_WITHIN.samePiece);
    return [remark(ounces, group, [reading], 'its repeats')];
  });
}

/** Pieces that are far from all pieces of cables with the same label, where at least two others are there to compare with. */
function amongPieces(groups: readonly Group[], sizeOf: ReadonlyMap<string, string>): Remark[] {
  const alike = new Map<string, Group[]>();
  for (const group of groups) {
    const size = sizeOf.get(group.cable);
    if (size === undefined || !comparable(group)) continue;
    const key = `${size}\u001f${group.quantity}`;
    alike.set(key, [...(alike.get(key) ?? []), group]);
  }
  return [...alike.values()].flatMap((fellows) => {
    const most = Math.max(...fellows.map((group) => group.most));
    const least = Math.min(...fellows.map((group) => group.least));
    if (fellows.length < 3 || most / least < TEN_TIMES) return [];
    const figures = fellows.map((group) => median(group.figures));
    const middle = median(figures);
    return fellows.flatMap((group, i) => {
      const figure = figures[i]!;
      if (ratioBetween(figure, middle) < TEN_TIMES) return [];
      const ounces = looksLikeOunces(figure, middle, group.quantity, OUNCES_WITHIN.sameKindOfPiece);
      return [remark(ounces, group, group.readings, 'the other cables of this size')];
    });
  });
}

/** Lengths of pieces differ on purpose; masses and resistances compare only per length; strands come thick and thin. */
const OWN_TO_THE_PIECE: ReadonlySet<string> = new Set([
  'specimen_length',
  'conductor_length',
  'strand_count',
  'bundle_count',
  'strands_in_bundle',
  'strand_diameter',
  'lay_length',
]);

function comparable(group: Group): boolean {
  if (OWN_TO_THE_PIECE.has(group.quantity)) return false;
  const scales = MASSES.has(group.quantity) || group.quantity === 'resistance';
  return !scales || group.figures.some((figure, i) => figure !== group.readings[i]!.value);
}

/** Values that are unlikely beside their fellows: ten times as large or small, ounces typed as grams, wider than what holds them. */
export function remarksOnValues(trial: Trial): Remark[] {
  const groups = groupsOf(trial);
  const sizeOf = new Map(
    trial.cables
      .filter((cable) => cable.role === 'compared')
      .map((cable) => [cable.cable, cable.label.size.toLowerCase().replace(/\s+/g, ' ')]),
  );
  const signs = pieceSigns(trial.specimens);
  for (const group of groups) group.sign = signs.get(group.piece);
  return [...groups.flatMap(withinPiece), ...amongPieces(groups, sizeOf), ...remarksOnWidths(trial)];
}
