import { quantityNamed } from '../../journal/quantities.ts';

/**
 * The coarsest step that a typed length or mass is taken to have, SI. Whoever types `1 m` or `0.5 kg` has left zeros away; a
 * tape and a scale both read finer than this. Common practice, no source.
 */
const COARSEST: Readonly<Record<string, { step: number; words: string }>> = {
  length: { step: 5e-3, words: '5 mm' },
  mass: { step: 5e-3, words: '5 g' },
};

/** The step to reckon with: as typed, but no coarser than a person with such a tool would have read. */
export function trustedStep(quantity: string, step: number): number {
  const coarsest = COARSEST[quantityNamed(quantity)?.dimension ?? ''];
  return coarsest ? Math.min(step, coarsest.step) : step;
}

/** As {@link trustedStep} for a plain length: the distance between the voltage contacts. */
export function trustedLengthStep(step: number): number {
  return Math.min(step, COARSEST.length.step);
}

/** What to say when zeros were left away; null when the text was typed finely enough. */
export function coarseText(quantity: string, value: string, unit: string, step: number): string | null {
  const coarsest = COARSEST[quantityNamed(quantity)?.dimension ?? ''];
  if (!coarsest || step <= coarsest.step) return null;
  return `"${`${value} ${unit}`.trim()}" was taken as read to ${coarsest.words}; type the zeros that were read, such as 1.000 m or 500 g.`;
}
