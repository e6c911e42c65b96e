import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, type NamedMark, placeNames } from '../../../src/report/standing/edgeNames.ts';

const ROOM = { left: 55, right: 440, top: 18, foot: 291, dot: 5.5, size: 14 };

const mark = (name: string, x: number, y: number, strong = false): NamedMark => ({ name, x, y, strong });
/** Three rings that overlap just above the lower axis, and others well away. */
const CROWD = [
  mark('Nine Elms Cord', 111, 235, true),
  mark('Brackenfell', 152, 260),
  mark('Tollgate', 148, 267),
  mark('Harrow & Sedge', 158, 273),
  mark('Saltmarsh', 283, 223, true),
  mark('Quill', 387, 70, true),
];
/** Two marks at one height, whose names met between them. */
const NEIGHBOURS = [
  mark('Harrow & Sedge', 233, 237, true),
  mark('Brackenfell', 287, 252, true),
  mark('Nine Elms Cord', 341, 232),
];

const overlap = (a: Box, b: Box) => a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
const round = ({ x, y }: NamedMark): Box => ({ x: x - 5.5, y: y - 5.5, w: 11, h: 11 });
const within = ({ x, y, w, h }: Box) =>
  x >= ROOM.left - 1e-9 && x + w <= ROOM.right + 1e-9 && y >= ROOM.top - 1e-9 && y + h <= ROOM.foot + 1e-9;

describe('names on a picture of cables', () => {
  it.each([
    ['rings that overlap above an axis', CROWD],
    ['marks at one height', NEIGHBOURS],
  ])('cover no mark and no other name: %s', (_what, marks) => {
    const boxes = placeNames(marks, ROOM).map(({ box }) => box);
    for (const [i, box] of boxes.entries()) {
      expect(within(box), `${marks[i]!.name} within the axes`).toBe(true);
      for (const other of marks) expect(overlap(box, round(other)), `${marks[i]!.name} on ${other.name}`).toBe(false);
      for (const [j, other] of boxes.entries())
        if (j !== i) expect(overlap(box, other), `${marks[i]!.name} and ${marks[j]!.name}`).toBe(false);
    }
  });

  it('are joined to their marks where two could be meant, and to no others', () => {
    const names = placeNames(CROWD, ROOM);
    for (const [i, { leader }] of names.entries()) {
      const { name, x, y } = CROWD[i]!;
      expect(leader !== null, name).toBe(['Brackenfell', 'Tollgate', 'Harrow & Sedge'].includes(name));
      if (leader !== null) expect(Math.hypot(leader.x1 - x, leader.y1 - y)).toBeCloseTo(5.5, 6);
    }
  });

  it('keep off a line where there is room beside it', () => {
    const alone = [mark('Saltmarsh', 200, 150, true)];
    const [free, beside] = [[], [{ x1: 200, y1: 150, x2: 400, y2: 150 }]].map(
      (lines) => placeNames(alone, ROOM, lines)[0]!.box,
    );
    expect(free!.x).toBeGreaterThan(200);
    expect(beside!.y > 150 || beside!.y + beside!.h < 150 || beside!.x + beside!.w < 200).toBe(true);
  });

  it('never leave the picture, wherever the marks lie', () => {
    const marks = fc.array(
      fc.record({
        name: fc.string({ minLength: 1, maxLength: 30 }),
        x: fc.double({ min: ROOM.left, max: ROOM.right, noNaN: true }),
        y: fc.double({ min: ROOM.top, max: ROOM.foot, noNaN: true }),
        strong: fc.boolean(),
      }),
      { maxLength: 9 },
    );
    fc.assert(
      fc.property(marks, (all) => placeNames(all, ROOM).every(({ box }) => within(box))),
      { seed: 20261125, numRuns: 60 },
    );
  });
});
