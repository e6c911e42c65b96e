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
/** Kept free beside the largest face, px. */
const SIDE = 20;
/** Diameter that the scale is made for where no cable has one, mm. */
const NO_DIAMETER = 16;
/** Room for the centre line's ticks above and below, px. */
const TICKS = 24;

/** The layout for faces in a row `width` px wide. The scale is a whole number of px per mm, as large as the column allows. */
export function faceLayout(cables: readonly SectionInput[], width: number): FaceLayout {
  const most = Math.max(1, Math.floor(width / LEAST_COLUMN));
  const rows = Math.ceil(cables.length / most);
  const across = Math.max(1, Math.ceil(cables.length / rows));
  const largest = 2 * Math.max(...cables.map((cable) => reach(sectionRadii(cable)) ?? 0));
  const room = Math.min(LARGEST_FACE, width / across - SIDE);
  const scalePxPerMm = Math.max(1, Math.floor(room / (largest > 0 ? largest : NO_DIAMETER)));
  return { across, scalePxPerMm, height: Math.ceil(Math.max(largest * scalePxPerMm, 56) + TICKS) };
}
