import type { CardSize } from '../../../../report/publish/cards/canvas.ts';
import type { CardKind } from '../../../../report/publish/cards/card.ts';

type Words<T extends string> = readonly (readonly [value: T, shown: string])[];

const KINDS: Words<CardKind> = [
  ['one', 'One cable'],
  ['two', 'Two cables, side by side'],
  ['field', 'The whole field'],
  ['order', 'The order so far'],
  ['method', 'A method, explained'],
  ['lower-third', 'A strip along the lower edge'],
];

const SIZES: Readonly<Record<CardSize, string>> = {
  '1920x1080': '1920 × 1080, film',
  '3840x2160': '3840 × 2160, film in 4K',
  '1080x1920': '1080 × 1920, upright',
  '1080x1080': '1080 × 1080, square',
};

/** What the choices of a card are called. */
export const CARD_WORDS = {
  kinds: KINDS,
  sizes: SIZES,
  abouts: [
    ['inside', 'What is inside'],
    ['bend', 'How it bends'],
    ['jacket', 'The jacket'],
    ['amps', 'What it carries'],
  ],
  /** For cuts that look like an animation. */
  steps: [
    ['1', 'Name'],
    ['2', 'Name and claim'],
    ['3', 'What was found'],
    ['4', 'Everything'],
  ],
} as const;
