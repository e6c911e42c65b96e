import { textWidth } from '../textFit.ts';

/** A place in the drawing, px; y counts down from the level of the clamp. */
interface Place {
  x: number;
  y: number;
}

export interface FaceToLabel {
  words: string;
  tip: Place;
  curve: readonly Place[];
}

export interface PlacedLabel {
  words: string;
  /** Right end of the words. */
  x: number;
  /** Their base line. */
  y: number;
}

interface Room {
  /** Half of what a cable is thick, px. */
  half: number;
  left: number;
  right: number;
  /** Size of the letters, px. */
  size: number;
}

/** Free between words and what they stand beside, px. */
const GAP = 7;
/** Half of a tip's ring with its line, px. */
const RING = 6;

/**
 * Where the words for each face stand clear of every curve and ring: those of the deeper tip below it, those of the other above
 * its curve at the right, where the curve is lowest.
 */
export function droopLabels(faces: readonly FaceToLabel[], room: Room): PlacedLabel[] {
  const [deepest] = [...faces].sort((a, b) => b.tip.y - a.tip.y);
  return faces.map((face) => (face === deepest ? below(face, faces, room) : above(face, faces, room)));
}

/** Parts of the drawing between two heights across a span: the highest and the lowest of what stands there. */
function across(faces: readonly FaceToLabel[], from: number, to: number, half: number) {
  const edges = faces.flatMap(({ curve, tip }) => [
    ...spanOf(curve, from, to).flatMap((y) => [y - half, y + half]),
    ...(tip.x > from - RING && tip.x < to + RING ? [tip.y - RING, tip.y + RING] : []),
  ]);
  return { highest: Math.min(...edges, Infinity), lowest: Math.max(...edges, -Infinity) };
}

/** Heights of a curve between two places, the neighbours on both sides included. */
function spanOf(curve: readonly Place[], from: number, to: number): number[] {
  return curve
    .filter(
      ({ x }, i) =>
        (x >= from && x <= to) || (curve[i + 1]?.x ?? x) >= from !== x >= from || (curve[i - 1]?.x ?? x) > to,
    )
    .map(({ y }) => y);
}

function below(face: FaceToLabel, faces: readonly FaceToLabel[], { half, left, size }: Room): PlacedLabel {
  const width = textWidth(face.words, size) + GAP;
  const x = Math.max(face.tip.x - 16, left + width - GAP);
  const { lowest } = across(faces, x - width, x, half);
  return { words: face.words, x, y: Math.max(lowest, face.tip.y + RING) + GAP + size * 0.75 };
}

function above(face: FaceToLabel, faces: readonly FaceToLabel[], { half, right, size }: Room): PlacedLabel {
  const width = textWidth(face.words, size) + GAP;
  const { highest } = across(faces, right - width, right, half);
  const free = Math.min(highest, face.tip.y - RING) - GAP;
  // The level is a line of its own: words stand above it or below it, never on it.
  const onLevel = free > -3 && free < size + 3;
  return { words: face.words, x: right, y: onLevel ? -6 : free };
}
