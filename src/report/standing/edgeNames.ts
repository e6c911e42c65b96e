/** Where the names of a picture of cables go: each beside its own mark, over no other, and joined to it where two could be meant. */
import { fittedLines, textWidth } from '../textFit.ts';

/** A mark on the picture, px. */
export interface NamedMark {
  name: string;
  x: number;
  y: number;
  /** Set in strong letters, which are a little broader. */
  strong: boolean;
}

export interface Box {
  x: number;
  y: number;
  w: number;
  h: number;
}

/** A stretch of line, px. */
export interface Stretch {
  x1: number;
  y1: number;
  x2: number;
  y2: number;
}

export interface PlacedName {
  text: string;
  box: Box;
  /** From the mark's rim to the name; null where the name stands so close that nobody could ask. */
  leader: Stretch | null;
}

export interface NameRoom {
  /** What names may not leave, px. */
  left: number;
  right: number;
  top: number;
  foot: number;
  /** Radius of a mark, and size of the letters, px. */
  dot: number;
  size: number;
}

const WIDEST = 170;
/** Widths are estimated; strong letters take a little more. */
const STRONGER = 1.08;
const GAP = 4;
/** Another mark must be this much farther from a name than its own, else a line says whose it is, px. */
const CLEARLY_NEARER = 8;
/** A name this near its mark needs no line, px. */
const BESIDE = 8;
/** Marks within this many radii crowd each other. */
const CROWDED = 8;
/** Distances from the mark at which places are looked for, and directions, eighths of a half turn. */
const RINGS = [0, 14, 30, 46, 62, 80];
const DIRECTIONS = [0, 8, 12, 4, 14, 2, 10, 6, 15, 1, 9, 7, 13, 3, 11, 5];
/** What it costs, in px of distance: to cover a mark or a name, to cross one, to leave in doubt whose it is, to lie over a line. */
const COST = { cover: 1000, cross: 120, doubt: 24, over: 12, turn: 0.4 };

const overlap = (a: Box, b: Box): boolean => a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
const within = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** The point of a box that is nearest to another point. */
const nearestOf = ({ x, y, w, h }: Box, px: number, py: number) => ({
  x: within(px, x, x + w),
  y: within(py, y, y + h),
});

function distance(box: Box, { x, y }: { x: number; y: number }): number {
  const near = nearestOf(box, x, y);
  return Math.hypot(near.x - x, near.y - y);
}

/** Distance of a point from a stretch of line. */
function fromLine({ x1, y1, x2, y2 }: Stretch, { x, y }: { x: number; y: number }): number {
  const [dx, dy] = [x2 - x1, y2 - y1];
  const long = dx * dx + dy * dy;
  const at = long === 0 ? 0 : within(((x - x1) * dx + (y - y1) * dy) / long, 0, 1);
  return Math.hypot(x1 + at * dx - x, y1 + at * dy - y);
}

/** Whether a line runs through a box: looked at in steps that are shorter than a letter is high. */
function runsThrough({ x1, y1, x2, y2 }: Stretch, { x, y, w, h }: Box): boolean {
  const steps = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / 4));
  return Array.from({ length: steps + 1 }, (_, i) => i / steps).some((t) => {
    const [px, py] = [x1 + t * (x2 - x1), y1 + t * (y2 - y1)];
    return px > x && px < x + w && py > y && py < y + h;
  });
}

function leaderTo(box: Box, { x, y }: NamedMark, dot: number): Stretch {
  const end = nearestOf(box, x, y);
  const long = Math.hypot(end.x - x, end.y - y) || 1;
  const share = Math.min(1, dot / long);
  return { x1: x + share * (end.x - x), y1: y + share * (end.y - y), x2: end.x, y2: end.y };
}

/** Boxes round a mark at growing distances, moved back into the picture where they would leave it. */
function placesRound({ x, y }: NamedMark, w: number, room: NameRoom): Box[] {
  const h = room.size + 2;
  return RINGS.flatMap((away) =>
    DIRECTIONS.map((eighth) => {
      const turn = (eighth * Math.PI) / 8;
      const reach = room.dot + GAP + away;
      const [cx, cy] = [x + Math.cos(turn) * (reach + w / 2), y + Math.sin(turn) * (reach + h / 2)];
      return {
        x: within(cx - w / 2, room.left, Math.max(room.left, room.right - w)),
        y: within(cy - h / 2, room.top, room.foot - h),
        w,
        h,
      };
    }),
  );
}

/** What stands on the picture when a name is placed. */
interface Taken {
  others: readonly NamedMark[];
  named: readonly PlacedName[];
  lines: readonly Stretch[];
}

/** A name in one place, with its line where it needs one, and what is against the place. */
function weighed(text: string, box: Box, mark: NamedMark, dot: number, { others, named, lines }: Taken) {
  const own = distance(box, mark);
  const doubt = others.some((m) => distance(box, m) < own + CLEARLY_NEARER);
  const leader = doubt || own > dot + BESIDE ? leaderTo(box, mark, dot) : null;
  const wide = { x: box.x - GAP, y: box.y - 1, w: box.w + 2 * GAP, h: box.h + 2 };
  const covered =
    [mark, ...others].filter((m) => distance(box, m) < dot + 1).length +
    named.filter((n) => overlap(wide, n.box)).length;
  const crossed =
    (leader === null ? [] : others.filter((m) => fromLine(leader, m) < dot)).length +
    named.filter((n) => leader !== null && runsThrough(leader, n.box)).length +
    named.filter((n) => n.leader !== null && runsThrough(n.leader, box)).length;
  const over = lines.filter((l) => runsThrough(l, box)).length;
  const cost = COST.cover * covered + COST.cross * crossed + COST.over * over + (doubt ? COST.doubt : 0) + own;
  return { placed: { text, box, leader }, cost };
}

/**
 * Names beside their marks, the most crowded marks first. A name covers neither a mark nor another name where there is room at all,
 * never leaves the picture, keeps off `lines` where that costs little, and has a line to its mark where it stands away from it or
 * another mark is about as near.
 */
export function placeNames(marks: readonly NamedMark[], room: NameRoom, lines: readonly Stretch[] = []): PlacedName[] {
  const { dot, size } = room;
  const around = (mark: NamedMark) =>
    marks.filter((m) => Math.hypot(m.x - mark.x, m.y - mark.y) < CROWDED * dot).length;
  const placed = new Map<NamedMark, PlacedName>();
  for (const mark of [...marks].sort((a, b) => around(b) - around(a))) {
    const [text = ''] = fittedLines(mark.name, Math.min(WIDEST, (room.right - room.left) / 2), size, 1);
    const w = textWidth(text, size) * (mark.strong ? STRONGER : 1) + 2;
    const taken = { others: marks.filter((m) => m !== mark), named: [...placed.values()], lines };
    const tried = placesRound(mark, w, room).map((box, i) => {
      const { placed: name, cost } = weighed(text, box, mark, dot, taken);
      return { name, cost: cost + COST.turn * (i % DIRECTIONS.length) };
    });
    placed.set(mark, tried.reduce((a, b) => (b.cost < a.cost ? b : a)).name);
  }
  return marks.map((mark) => placed.get(mark)!);
}
