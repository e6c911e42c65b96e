/** A second invented day: the bend pieces droop, are pushed, and two club members judge them by hand in sleeves. */
import { droopOfSet } from '../../src/methods/flex/droopWithSet.ts';
import { pairSchedule } from '../../src/methods/flex/pairs/schedule.ts';
import { type Draws, drawsFrom } from '../../test/simulate/random.ts';
import { type Row, row, shown } from '../../test/simulate/tables.ts';
import { metalArea } from './benchDay.ts';
import { BEND_TRUTHS } from './bendTruths.ts';
import { toolsFrom } from './tools.ts';
import type { Truth } from './truths.ts';

const GRAVITY = 9.80665;
const MM = 1000;
const OVERHANG = 0.32; // m
const SPAN = 0.24; // m
const PUSHED_TO = [2, 4, 6, 8]; // mm
const DAY = Date.UTC(2026, 9, 4, 9, 10);
const ROOM = 19.6; // °C all day: the pieces lay in the workshop overnight
const KITCHEN = { resolution: 1, limit: 1, percent: 0.5, scatter: 0.4 }; // g
const ROUNDS = 2;
const JUDGES = ['first judge', 'second judge'];
/** Weight of "same" between equals, and how much a judge feels of a ratio of stiffness. */
const TIE = 0.5;
const FEELS = 2.2;

export const KITCHEN_SCALE: Row = row({
  instrument: 'kitchen-scale',
  kind: 'kitchen scale',
  resolution: KITCHEN.resolution,
  max_error: KITCHEN.limit,
  max_error_percent: KITCHEN.percent,
  unit: 'g',
  note: 'pushed on, as a force gauge',
});

const bent = (truths: readonly Truth[]) => truths.filter((truth) => BEND_TRUTHS[truth.id] !== undefined);
const timeOf = (minute: number) => new Date(DAY + minute * 60_000).toISOString().replace('.000Z', 'Z');

/** N/m of the whole cable. */
function weightOf(truth: Truth): number {
  const outer = truth.bundleDiameter + 2 * truth.wall;
  const jacket = (Math.PI / 4) * (outer ** 2 - truth.bundleDiameter ** 2) * truth.jacketDensity;
  return (metalArea(truth) * truth.layFactor * truth.density + jacket + truth.separatorPerMetre) * GRAVITY;
}

/** Droop and push of every bend piece; `first` numbers the first reading. */
export function bendDay(truths: readonly Truth[], seed: number, first: number): Row[] {
  const draws = drawsFrom(seed);
  const read = toolsFrom(draws);
  const scale = { offset: draws.between(-1, 1) * KITCHEN.limit, gain: (draws.between(-1, 1) * KITCHEN.percent) / 100 };
  const rows: Row[] = [];
  const record = (specimen: string, quantity: string, value: string, unit: string, instrument: string, more: object) =>
    rows.push(
      row({
        reading: `r${String(first + rows.length).padStart(3, '0')}`,
        specimen,
        quantity,
        value,
        unit,
        instrument,
        at: timeOf(rows.length),
        temperature: read('thermometer', ROOM),
        temperature_unit: 'C',
        by: 'club bench',
        ...more,
      }),
    );
  for (const truth of bent(truths)) {
    const { stiffness, set, stuck } = BEND_TRUTHS[truth.id]!;
    const piece = `${truth.id}-bend`;
    const overhang = OVERHANG + draws.scatter(0.001);
    const inMm = (quantity: string, metres: number, more: object) =>
      record(piece, quantity, read('rule', metres * MM), 'mm', 'rule', more);
    for (let i = 0; i < 3; i++) inMm('overhang', overhang, { set: 'droop' });
    const lambda = (weightOf(truth) * overhang ** 3) / stiffness;
    for (const [position, sign] of [
      ['up', 1],
      ['down', -1],
    ] as const)
      for (let i = 0; i < 3; i++)
        inMm('tip_drop', droopOfSet(lambda, set, sign).drop * overhang, { set: 'droop', position });
    inMm('push_span', SPAN, { set: 'first push' });
    const slope = (48 * stiffness * stuck) / SPAN ** 3;
    for (const deflection of PUSHED_TO) {
      const grams = (slope * (deflection / MM) * 1000) / GRAVITY;
      const felt = grams * (1 + scale.gain) + scale.offset + draws.scatter(KITCHEN.scatter);
      const more = { set: 'first push', position: 'loading' };
      record(piece, 'push_deflection', read('caliper', deflection), 'mm', 'caliper', more);
      record(piece, 'push_force', shown(felt, KITCHEN.resolution), 'gf', 'kitchen-scale', more);
    }
  }
  return rows;
}

/** Every pair by both judges, twice, in the order and hands that the schedule asks for. */
export function judgeDay(truths: readonly Truth[], seed: number): Row[] {
  const draws = drawsFrom(seed);
  const things = bent(truths);
  const ease = things.map((truth) => -FEELS * Math.log(BEND_TRUTHS[truth.id]!.stiffness));
  return JUDGES.flatMap((by, judge) =>
    Array.from({ length: ROUNDS }, (_, round) =>
      pairSchedule(things.length, { seed: (seed + judge).toString(16).padStart(16, '0'), round }).map((pair) => {
        const result = judgedBy(ease[pair.left]! - ease[pair.right]!, draws);
        return { by, round: round + 1, left: things[pair.left]!.id, right: things[pair.right]!.id, result };
      }),
    ).flat(),
  ).map(({ by, round, left, right, result }, i) =>
    row({
      judgement: `j${String(i + 1).padStart(2, '0')}`,
      left: `${left}-bend`,
      right: `${right}-bend`,
      result,
      by,
      round,
      at: timeOf(240 + i),
      temperature: ROOM.toFixed(1),
      temperature_unit: 'C',
      blinded: 'sleeve',
    }),
  );
}

function judgedBy(d: number, draws: Draws): string {
  return draws.pick(['left', 'right', 'same'], [Math.exp(d / 2), Math.exp(-d / 2), TIE]);
}
