import type { Label } from '../../trial/trial.ts';
import { type MetalClaim, readMetalText } from '../../units/metalText.ts';
import { readSizeText, type SizeClaim } from '../../units/sizeText.ts';

/** A label as the assay takes it: its words, and what they can mean. */
export interface ReadLabel {
  size: SizeClaim | null;
  metal: MetalClaim;
  /** Words to show for how the size was read, or why it could not be. */
  readAs: string;
  vague: boolean;
  /** m², nominal; null when the label gives no area. */
  area: number | null;
}

/** Reads a cable's label. A size that cannot be read is no error here: nothing can then be judged by it, and it says so. */
export function readLabel(label: Label): ReadLabel {
  const size = readSizeText(label.size);
  const metal = readMetalText(label.metal);
  if (!size.ok) return { size: null, metal, readAs: `not readable as a size: ${size.found}`, vague: true, area: null };
  return { size: size.value, metal, readAs: size.value.readAs, vague: size.value.vague, area: size.value.area };
}

/** Whether the label asks for copper: it says so, or it says nothing of the metal. */
export function asksForCopper(metal: MetalClaim): boolean {
  return metal.metal !== 'copper-clad aluminium' && metal.metal !== 'aluminium';
}
