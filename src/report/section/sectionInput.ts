import type { CableFindings, Measured } from '../../findings/schema.ts';
import { type MetalKind, metalKind } from '../metalKind.ts';
import { sectionDescription } from './sectionDescription.ts';

/** What a cut face shows, in mm and mm²; null is drawn as unknown. */
export interface SectionInput {
  name: string;
  /** True area of all the metal. */
  metalArea: number | null;
  metal: MetalKind;
  /** Copper's share of the metal's area, for clad metal. */
  copperShare: number | null;
  /** Area that the label claims. */
  claimedArea: number | null;
  bundleDiameter: number | null;
  outerDiameter: number | null;
  wall: number | null;
  strandDiameter: number | null;
  strandCount: number | null;
  jacketColour: string;
  /** Words in the middle of a face without a metal area: what would give one. `weigh it` when left out. */
  areaWords?: string;
  /** Every figure of the drawing in one sentence. */
  description: string;
}

/** The cut face of a cable from its findings. A figure that was not found stays null: nothing is guessed here. */
export function sectionInput(cable: CableFindings): SectionInput {
  return {
    name: cable.name,
    metalArea: positive(cable.conductor_area),
    metal: metalKind(cable.metal_found),
    copperShare: cable.copper_share?.value ?? null,
    claimedArea: cable.label.claimed_area_mm2,
    bundleDiameter: positive(cable.bundle_diameter),
    outerDiameter: positive(cable.outer_diameter),
    wall: positive(cable.wall?.mean ?? null),
    strandDiameter: positive(cable.strand_diameter),
    strandCount: positive(cable.strand_count),
    jacketColour: cable.jacket_colour,
    ...(contradicts(cable) ? { areaWords: 'read again' } : {}),
    description: sectionDescription(cable),
  };
}

/** Readings are there, but contradict each other so grossly that no area follows from them. */
function contradicts(cable: CableFindings): boolean {
  return cable.conductor_area === null && cable.consistency?.recheck != null;
}

function positive(figure: Measured | null): number | null {
  return figure !== null && Number.isFinite(figure.value) && figure.value > 0 ? figure.value : null;
}
