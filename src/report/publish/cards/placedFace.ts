/** Cut faces on a card: several at one scale, each with its middle where the card wants it. */
import type { CableFindings } from '../../../findings/schema.ts';
import { type SectionOptions, sectionDrawing } from '../../section/sectionDrawing.ts';
import { type SectionInput, sectionInput } from '../../section/sectionInput.ts';
import { reach, sectionRadii } from '../../section/sectionRadii.ts';
import { group } from '../../svg.ts';

/** Taken for a face of which no size is known, mm. */
const UNKNOWN_REACH = 8;

/** Largest radius among the faces of some cables, mm: what their common scale is made for. */
export const widestReach = (cables: readonly CableFindings[]): number =>
  Math.max(...cables.map((cable) => reach(sectionRadii(sectionInput(cable))) ?? UNKNOWN_REACH));

/** A cut face about the point (`cx`, `cy`), px of the card. */
export function placedFace(input: SectionInput, cx: number, cy: number, options: Omit<SectionOptions, 'as'>): string {
  const { svg, width, height } = sectionDrawing(input, { ...options, as: 'group' });
  return group({ transform: `translate(${cx - width / 2} ${cy - height / 2})` }, svg);
}
