import { readMetalText } from '../../units/metalText.ts';
import { readSizeText } from '../../units/sizeText.ts';
import { readStrandsText, type StrandsText, withoutStrands } from '../../units/strandsText.ts';

/** A label typed as one line, parted into what claims the size and what claims the metal. */
export interface ReadLabelText {
  size: string;
  metal: string;
  /** As the label prints them; null where it does not. */
  strands: StrandsText | null;
}

/** Words that belong to a metal claim when a label is typed on one line. */
const METAL_WORDS =
  /\b(?:100\s*%\s*|99\.9+\s*%\s*)?(?:tinned\s+|silver[- ]tinned\s+|pure\s+|virgin\s+|oxygen[- ]free\s+)*(?:ofc|of[eh]c|cca|copper(?:[- ](?:clad|coated|plated)(?:\s+alumini?um)?)?|alumini?um|tinned|oxygen[- ]free)\b(?:\s+(?:ofc|copper|alumini?um))*/gi;

/**
 * Parts `2 AWG tinned OFC` into `2 AWG` and `tinned OFC`. The size keeps every word that is not about the metal, so that
 * `true spec` and `oversized` stay with it; a line that holds no metal words is all size. Strands such as `665 x 0.25` are
 * taken out first.
 */
export function splitLabelText(label: string): ReadLabelText {
  const strands = readStrandsText(label);
  return { ...sizeAndMetal(withoutStrands(label)), strands };
}

function sizeAndMetal(text: string): Omit<ReadLabelText, 'strands'> {
  const metals = text.match(METAL_WORDS) ?? [];
  const metal = metals.join(' ').trim();
  if (!metal || readMetalText(metal).metal === 'unreadable') return { size: text.trim(), metal: '' };
  const size = text
    .replace(METAL_WORDS, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;]+|[\s,;]+$/g, '')
    .trim();
  return readSizeText(size).ok ? { size, metal } : { size: text.trim(), metal };
}
