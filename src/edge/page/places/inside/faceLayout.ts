import type { SectionInput } from '../../../../report/section/sectionInput.ts';
import { reach, sectionRadii } from '../../../../report/section/sectionRadii.ts';

/** How the row of cut faces is laid out: how many stand side by side, and the one scale that all are drawn to. */
export interface FaceLayout {
  across: number;
  scalePxPerMm: number;
  /** Height that every face is centred in, px. */
  height: number;
}

/** A face needs this much room to show its strands and its name, px. */
const LEAST_COLUMN = 150;
/** Faces are not drawn larger than this, however wide the screen, so that the table stays in sight, px. */
const LARGEST_FACE = 320;
/** Room round a face for the centre line's ticks, both sides together, px. */
const TICKS = 24;
/** Room that the ring of a jacket without a measured size takes, both sides together, px. */
const UNSIZED_JACKET = 18;
/** Diameter that the scale is made for where no cable has one, mm. */
const NO_DIAMETER = 16;
/** Thinner cables are not enlarged beyond this, so that a millimetre still fits beside its words, px per mm. */
const LARGEST_SCALE = 150;
/** Least height of a face, for one of which nothing is known, px. */
const LEAST_HEIGHT = 56;

/** The layout for faces in a row `width` px wide, at a scale as large as the column allows. */
export function faceLayout(cables: readonly SectionInput[], width: number): FaceLayout {
  const most = Math.max(1, Math.floor(width / LEAST_COLUMN));
  const rows = Math.ceil(cables.length / most);
  const across = Math.max(1, Math.ceil(cables.length / rows));
  const radii = cables.map(sectionRadii);
  const largest = 2 * Math.max(...radii.map((each) => reach(each) ?? 0));
  const ring = radii.some((each) => each.outer === null) ? UNSIZED_JACKET : 0;
  const room = Math.min(LARGEST_FACE, width / across - TICKS) - ring;
  const scalePxPerMm = roundScale(room / (largest > 0 ? largest : NO_DIAMETER));
  return {
    across,
    scalePxPerMm,
    height: Math.ceil(Math.max(largest * scalePxPerMm + ring, LEAST_HEIGHT) + TICKS),
  };
}

/** The scale rounded down to a whole number of px per mm; for cables too thick for that, of mm per px. */
function roundScale(scale: number): number {
  return scale >= 1 ? Math.min(LARGEST_SCALE, Math.floor(scale)) : 1 / Math.ceil(1 / scale);
}

/** Lengths of a scale bar that people can count by, mm, the preferred ones first. */
const BARS = [10, 5, 2, 1, 20, 50, 100, 200, 500, 1000];
/** A bar between these can be read and leaves room for its words, px. */
const SHORTEST_BAR = 40;
const LONGEST_BAR = 200;

/** The length that the scale bar shows at a scale, mm. */
export function scaleBarLength(scalePxPerMm: number): number {
  const fits = (mm: number) => mm * scalePxPerMm >= SHORTEST_BAR && mm * scalePxPerMm <= LONGEST_BAR;
  return BARS.find(fits) ?? 1;
}
