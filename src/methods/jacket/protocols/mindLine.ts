import { protocolOf } from './protocols.ts';

const WEAR = 'buzzer from a coin cell, never from a vehicle battery';

/** The cautions of each described test in one line, to stand where the piece is worked on. */
const LINES: Readonly<Record<string, string>> = {
  scrape: `fingers out of the stroke; mask or wet against dust; ${WEAR}.`,
  sandpaper: `mask or wet against dust, hands washed before food; ${WEAR}.`,
  'cut-through': `fingers clear of the edge, a stop under the plunger; ${WEAR}.`,
  pinch: `feet and fingers clear of weight and lever; ${WEAR}.`,
  'hot iron': `outdoors or extractor, nothing near that burns, no fluids about; stop at once if it flames; ${WEAR}.`,
  'cold bend': 'eye protection, face out of the plane of the bend: cold pieces whip back and throw chips.',
  'heat ageing':
    'outdoors or extractor, no kitchen oven, no flame; stop at once if it smokes; no fluids on the same day.',
  fluid:
    'outdoors, gloves, lid on; no chlorinated cleaner, no heat and no spark on the same day; nothing back to the kitchen.',
};

/** One line of cautions for a test as it is called; the usual ones for a test of one's own. */
export function mindLine(test: string): string {
  return (
    LINES[protocolOf(test)?.name ?? ''] ?? `eye protection, fingers clear, dust kept off food, no burning; ${WEAR}.`
  );
}
