/** A place in a picture, in its own pixels: x to the right, y down. */
export interface Spot {
  x: number;
  y: number;
}

/** What was marked in a photo of a droop. */
export interface MarkedDroop {
  /** Where the piece leaves the clamp, and its free end. */
  clamp: Spot;
  tip: Spot;
  /** Two spots a known distance apart, in the plane of the piece. */
  ruleFrom: Spot;
  ruleTo: Spot;
  /** m between those two. */
  apart: number;
  /** True when the line between those two lies level; else the picture's own edge is taken for level. */
  ruleIsLevel: boolean;
}

/** What follows from the marks, SI. */
export interface DroopInPhoto {
  /** m in a pixel. */
  scale: number;
  /** Level distance from clamp to tip, and depth of the tip below the clamp, m. */
  reach: number;
  drop: number;
  /** Straight line from clamp to tip, m, and its angle below level, rad. */
  chord: number;
  chordAngle: number;
  /** Unit vectors in the picture: out from the clamp along the level, and down. */
  out: Spot;
  down: Spot;
}

const minus = (a: Spot, b: Spot): Spot => ({ x: a.x - b.x, y: a.y - b.y });
const dot = (a: Spot, b: Spot): number => a.x * b.x + a.y * b.y;

/**
 * Scale, reach and drop of a droop from four marks in a photo. The camera looked square at the plane in which the piece hangs;
 * it may have been turned about its own axis if the two known spots lie level.
 *
 * @returns null when two spots fall on each other or the distance is none
 */
export function droopInPhoto(marks: MarkedDroop): DroopInPhoto | null {
  const { clamp, tip, ruleFrom, ruleTo, apart, ruleIsLevel } = marks;
  const rule = minus(ruleTo, ruleFrom);
  const pixels = Math.hypot(rule.x, rule.y);
  const chord = minus(tip, clamp);
  if (!(pixels > 0 && apart > 0 && Number.isFinite(apart)) || Math.hypot(chord.x, chord.y) === 0) return null;
  const scale = apart / pixels;
  const along = ruleIsLevel ? { x: rule.x / pixels, y: rule.y / pixels } : { x: 1, y: 0 };
  const towards = dot(chord, along) >= 0 ? 1 : -1;
  const out = { x: towards * along.x, y: towards * along.y };
  // Square to the level, on the side where the picture's own down is.
  const square = { x: -along.y, y: along.x };
  const down = square.y < 0 ? { x: -square.x, y: -square.y } : square;
  const reach = dot(chord, out) * scale;
  const drop = dot(chord, down) * scale;
  return { scale, reach, drop, chord: Math.hypot(reach, drop), chordAngle: Math.atan2(drop, reach), out, down };
}

/** A point of a computed droop as a spot in the picture: `reach` and `drop` in m from the clamp. */
export function spotInPhoto({ scale, out, down }: DroopInPhoto, clamp: Spot, reach: number, drop: number): Spot {
  return {
    x: clamp.x + (reach * out.x + drop * down.x) / scale,
    y: clamp.y + (reach * out.y + drop * down.y) / scale,
  };
}

/**
 * What a tap that is off by some pixels makes of the drop, m: both ends of the drop and both of the rule, independent.
 *
 *     u² = scale² (2 p² + 2 p² (drop / apart)²)
 */
export function dropDoubt(found: DroopInPhoto, apart: number, pixels: number): number {
  return found.scale * pixels * Math.SQRT2 * Math.hypot(1, found.drop / apart);
}
