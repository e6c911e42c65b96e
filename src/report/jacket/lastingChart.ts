import { openRange } from '../../findings/jacket/words.ts';
import type { EnduranceCable, EnduranceTest, LastingMedian } from '../../findings/shapes/jacket.ts';
import { rangeText } from '../../units/rangeText.ts';
import { plainText } from '../figures.ts';

/** One piece as a dot. */
export interface LastingPiece {
  amount: number;
  survived: boolean;
}

/** One cable in the picture of a test. An end that the pieces do not set is null. */
export interface LastingRow {
  cable: string;
  name: string;
  /** `300 (200 to 390)`: what stands at the end of the row. */
  text: string;
  value: number | null;
  low: number | null;
  high: number | null;
  /** Place in bands; null outside the order. */
  band: number | null;
  pieces: LastingPiece[];
}

/** One test as a picture: cables from the longest lasting down. */
export interface LastingChart {
  test: string;
  unit: string;
  /** `share`: from none to all came through; `amount`: by ratio. */
  scale: 'amount' | 'share';
  rows: LastingRow[];
  /** False where the bands would say that nothing was parted although some pairs were: then words have the order. */
  banded: boolean;
}

/** Medians of a test with their intervals and the pieces themselves. */
export function lastingChart(test: EnduranceTest): LastingChart {
  if (test.kind === 'passed') return passedChart(test);
  const rows = test.cables.map((c) => rowOf(c, c.median, c.band, piecesOf(c, 1)));
  return {
    test: test.test,
    unit: test.unit,
    scale: 'amount',
    rows: ordered(rows),
    banded: isBanded(test.cables, test.pairs),
  };
}

/** The same for each millimetre of wall; null where that means nothing or no wall is known. */
export function perWallChart(test: EnduranceTest, wallOf: ReadonlyMap<string, number>): LastingChart | null {
  const per = test.per_wall;
  if (per === null) return null;
  const rows = per.cables.flatMap(({ cable, median, band }) => {
    const own = test.cables.find((c) => c.cable === cable);
    const wall = wallOf.get(cable);
    return own ? [rowOf(own, median, band, wall === undefined ? [] : piecesOf(own, wall))] : [];
  });
  return {
    test: test.test,
    unit: per.unit,
    scale: 'amount',
    rows: ordered(rows),
    banded: isBanded(per.cables, per.pairs),
  };
}

/** What is a whole per cent but for the last bit counts as one. */
const ROUNDING = 1e-9;

function passedChart(test: EnduranceTest): LastingChart {
  const rows = test.cables.map(
    ({ cable, name, passed, survived, n, band, role }): LastingRow => ({
      cable,
      name: nameOf(cable, name, role),
      text: passed
        ? `${survived} of ${n} (${Math.floor(100 * passed.interval[0] + ROUNDING)} to ${Math.ceil(100 * passed.interval[1] - ROUNDING)} %)`
        : `${survived} of ${n}`,
      value: passed?.share ?? null,
      low: passed?.interval[0] ?? null,
      high: passed?.interval[1] ?? null,
      band,
      pieces: [],
    }),
  );
  const banded = isBanded(test.cables, test.pairs);
  return { test: test.test, unit: 'of the pieces', scale: 'share', rows: ordered(rows), banded };
}

/** Bands speak where a cut goes through the field, or where nothing at all was parted. */
function isBanded(cables: readonly { band: number | null }[], pairs: readonly { parted: boolean }[]): boolean {
  return cables.some(({ band }) => (band ?? 1) > 1) || pairs.every(({ parted }) => !parted);
}

const nameOf = (cable: string, name: string, role: string): string =>
  `${name || cable}${role === 'compared' ? '' : `, ${role}`}`;

const piecesOf = ({ pieces }: EnduranceCable, wall: number): LastingPiece[] =>
  pieces.map(({ amount, outcome }) => ({ amount: amount / wall, survived: outcome === 'survived' }));

function rowOf(c: EnduranceCable, median: LastingMedian | null, band: number | null, pieces: LastingPiece[]) {
  const [low, high] = median?.interval ?? [null, null];
  const name = nameOf(c.cable, c.name, c.role);
  return { cable: c.cable, name, text: textOf(median), value: median?.value ?? null, low, high, band, pieces };
}

function textOf(median: LastingMedian | null): string {
  if (median === null) return 'not known';
  const { value, interval } = median;
  const [low, high] = interval;
  const range = low !== null && high !== null ? rangeText(low, high) : openRange(interval, '').trim();
  const shown = value === null ? 'not reached' : plainText(Number(value.toPrecision(2)), '').trim();
  return range === '' ? shown : `${shown} (${range})`;
}

/** The longest lasting on top, what stands outside the order last. A median not reached lies above every one that was. */
function ordered(rows: LastingRow[]): LastingRow[] {
  const reach = ({ value, low }: LastingRow) => value ?? (low === null ? -1 : Number.MAX_VALUE);
  return [...rows].sort(
    (a, b) =>
      Number(a.band === null) - Number(b.band === null) ||
      (a.band ?? 0) - (b.band ?? 0) ||
      reach(b) - reach(a) ||
      (b.low ?? 0) - (a.low ?? 0),
  );
}
