/** A third invented day: three pieces of each cable are scraped with a needle, three others rubbed with sandpaper. */
import { type Draws, drawsFrom } from '../../test/simulate/random.ts';
import { type Row, row } from '../../test/simulate/tables.ts';
import { ABUSE_SHAPE, ABUSE_TRUTHS } from './abuseTruths.ts';
import { tagLength } from './benchDay.ts';
import type { Truth } from './truths.ts';

const PIECES = 3;
const PIECE_LENGTH = 0.12; // m
const MM = 1000;
const DAY = Date.UTC(2026, 9, 5, 9, 0);
const MINUTES_EACH = 6;
const ROOM = 19.8; // °C
const SCRAPE = { load: 7, end: 500 }; // N, strokes
/** Looked at every ten strokes: copper is seen at the next look after it shows. */
const SANDPAPER = { load: 10, end: 120, every: 10 }; // N, strokes, strokes

const abused = (truths: readonly Truth[]) => truths.filter((truth) => ABUSE_TRUTHS[truth.id] !== undefined);
const TESTS = ['scrape', 'sandpaper'] as const;
type Test = (typeof TESTS)[number];
const pieceOf = (truth: Truth, test: Test, n: number) => `${truth.id}-${test}-${n}`;

export function abusePieces(truth: Truth): Row[] {
  if (ABUSE_TRUTHS[truth.id] === undefined) return [];
  return TESTS.flatMap((test) =>
    Array.from({ length: PIECES }, (_, i) =>
      row({
        specimen: pieceOf(truth, test, i + 1),
        cable: truth.id,
        code: truth.code,
        cut_length: tagLength(PIECE_LENGTH),
        cut_length_unit: 'mm',
        cut_from: `${truth.id}-whole`,
        kind: 'abuse',
        taken_from: 'middle',
        note: '',
      }),
    ),
  );
}

/** Strokes that a piece takes: Weibull about a median that grows with the wall. */
function strokes(draws: Draws, perMm: number, wall: number): number {
  const u = Math.max(draws.unit(), Number.MIN_VALUE);
  return perMm * wall * MM * (-Math.log(u) / Math.LN2) ** (1 / ABUSE_SHAPE);
}

/** Both tests, the cables in turn so that a worn needle or a warmer room meets all alike. */
export function abuseDay(truths: readonly Truth[], seed: number): Row[] {
  const draws = drawsFrom(seed);
  const rows: Row[] = [];
  const record = (truth: Truth, n: number, test: Test, load: number, amount: number, failed: boolean, more: object) =>
    rows.push(
      row({
        endurance: `e${String(rows.length + 1).padStart(2, '0')}`,
        specimen: pieceOf(truth, test, n),
        test,
        amount,
        unit: 'strokes',
        outcome: failed ? 'failed' : 'survived',
        stress: load,
        stress_unit: 'N',
        temperature: ROOM.toFixed(1),
        temperature_unit: 'C',
        by: 'club bench',
        at: new Date(DAY + rows.length * MINUTES_EACH * 60_000).toISOString().replace('.000Z', 'Z'),
        ...more,
      }),
    );
  for (let n = 1; n <= PIECES; n++)
    for (const truth of abused(truths)) {
      const took = Math.ceil(strokes(draws, ABUSE_TRUTHS[truth.id]!.scrape, truth.wall));
      record(truth, n, 'scrape', SCRAPE.load, Math.min(took, SCRAPE.end), took <= SCRAPE.end, {});
    }
  for (let n = 1; n <= PIECES; n++)
    for (const truth of abused(truths)) {
      const { load, end, every } = SANDPAPER;
      const seen = every * Math.ceil(strokes(draws, ABUSE_TRUTHS[truth.id]!.sandpaper, truth.wall) / every);
      record(truth, n, 'sandpaper', load, Math.min(seen, end), seen <= end, { inspected_every: every });
    }
  return rows;
}
