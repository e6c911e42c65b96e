import { describe, expect, it } from 'vitest';
import { piecesToAbuse } from '../../../src/findings/bench/piecesToAbuse.ts';
import { hourOf, nextWallHour, WALL_HOURS, wallsRead } from '../../../src/findings/bench/wallHours.ts';
import { PROTOCOLS } from '../../../src/methods/jacket/protocols/protocols.ts';
import type { Reading, Trial } from '../../../src/trial/trial.ts';

const wall = (position: string, more: Partial<Reading> = {}) =>
  ({ specimen: 'a', quantity: 'wall_thickness', standing: 'counted', position, ...more }) as Reading;
const read = (...readings: Reading[]) => ({ readings });

describe('six places round the face', () => {
  it('go round with the clock from the thinnest', () => {
    expect(WALL_HOURS.map(hourOf)).toEqual([12, 2, 4, 6, 8, 10]);
    expect(nextWallHour(read(), 'a')).toBe("12 o'clock");
    expect(nextWallHour(read(wall('12 h'), wall("2 o'clock")), 'a')).toBe("4 o'clock");
  });

  it('take no account of other pieces, quantities and readings that do not count', () => {
    const others = read(
      wall('0', { specimen: 'b' }),
      wall('0', { quantity: 'outer_diameter' }),
      wall('0', { standing: 'struck' }),
    );
    expect(nextWallHour(others, 'a')).toBe("12 o'clock");
  });

  it('fill a gap first, and begin anew after six', () => {
    const six = WALL_HOURS.map((hour) => wall(hour));
    expect(nextWallHour(read(...six.filter((_, i) => i !== 2)), 'a')).toBe("4 o'clock");
    expect(nextWallHour(read(...six), 'a')).toBe("12 o'clock");
    expect(wallsRead(read(...six, wall('60°')), 'a')).toEqual([1, 2, 1, 1, 1, 1]);
  });
});

const CABLES = ['c0', 'c1', 'c2', 'ctl'];
const pieces = (rows: readonly [specimen: string, test: string][] = []) =>
  ({
    trial: 't',
    cables: CABLES.map((cable) => ({ cable, role: cable === 'ctl' ? 'control' : 'compared' })),
    specimens: CABLES.flatMap((cable) => [
      ...[1, 2, 3].map((n) => ({ specimen: `${cable}-x${n}`, cable, kind: 'abuse' })),
      { specimen: `${cable}-a`, cable, kind: 'apart' },
    ]),
    endurance: rows.map(([specimen, test]) => ({ specimen, row: { test } })),
  }) as unknown as Trial;

describe('pieces of a test', () => {
  it('are taken by rounds, one of each cable a round, mixed anew', () => {
    const { left } = piecesToAbuse(pieces(), 'scrape');
    expect(left).toHaveLength(9);
    const rounds = [0, 3, 6].map((from) => left.slice(from, from + 3).map((p) => p.cable));
    for (const round of rounds) expect([...round].sort()).toEqual(['c0', 'c1', 'c2']);
    const orders = ['scrape', 'sandpaper', 'pinch', 'cut-through', 'fluid'].map((test) =>
      piecesToAbuse(pieces(), test)
        .left.map((p) => p.specimen)
        .join(),
    );
    expect(new Set(orders).size).toBeGreaterThan(1);
  });

  it('come in the same order on every device, whatever is recorded meanwhile', () => {
    const { left } = piecesToAbuse(pieces(), 'scrape');
    const [first, ...rest] = left.map((p) => p.specimen);
    const after = piecesToAbuse(pieces([[first!, 'Scrape ']]), 'scrape');
    expect(after.left.map((p) => p.specimen)).toEqual(rest);
    expect(after.all.find((p) => p.specimen === first)!.done).toBe(true);
  });

  it('are no longer fresh after another test', () => {
    const { all, left } = piecesToAbuse(pieces([['c1-x2', 'sandpaper 150']]), 'scrape');
    expect(left.some((p) => p.specimen === 'c1-x2')).toBe(false);
    expect(all.find((p) => p.specimen === 'c1-x2')!.usedIn).toEqual(['sandpaper 150']);
  });
});

describe('cautions beside their steps', () => {
  it.each(PROTOCOLS.map((p) => [p.name, p] as const))('%s has some, and each once', (_, { steps }) => {
    const cautions = steps.flatMap((each) => each.cautions);
    expect(cautions.length).toBeGreaterThan(0);
    expect(new Set(cautions).size).toBe(cautions.length);
  });

  it.each([
    ['scrape', 'coin cell', 'Count until copper shows'],
    ['pinch', 'coin cell', 'when the buzzer sounds'],
    ['cold bend', 'Eye protection', 'bend half a turn'],
    ['heat ageing', 'No kitchen oven', 'Hang the pieces'],
    ['fluid', 'Outdoors, in small amounts', 'Hang it in the fluid'],
    ['cut-through', 'Fingers clear', 'Lower the edge'],
    ['hot iron', 'fumes of PVC', 'settle at one temperature'],
  ])('%s: “%s” stands beside “%s”', (name, caution, step) => {
    const { steps } = PROTOCOLS.find((p) => p.name === name)!;
    const found = steps.find(({ cautions }) => cautions.some((text) => text.includes(caution)))!;
    expect(found.text).toContain(step);
  });
});
