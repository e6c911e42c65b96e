/**
 * The colour that a jacket is drawn in: the recorded name mapped to one muted value, so that no jacket is as strong as
 * copper and no red or orange one can be taken for it.
 */
import type { Theme } from './theme.ts';

interface Muted {
  light: string;
  dark: string;
  /** Too near to the metal or to the ground to stand by its fill alone: drawn with a heavier outline. */
  heavyOutline?: boolean;
}

/** Saturation 30–45 % where there is a hue, and dark enough to part from the bed inside it. */
const MUTED = {
  black: { light: '#2F3436', dark: '#353B3D' },
  red: { light: '#7F2D35', dark: '#7D323A' },
  blue: { light: '#314A62', dark: '#38546F' },
  green: { light: '#2F5A42', dark: '#38664C' },
  teal: { light: '#2C575B', dark: '#346367' },
  yellow: { light: '#A28C45', dark: '#9A8747' },
  orange: { light: '#B68A52', dark: '#B9955F', heavyOutline: true },
  brown: { light: '#5C4233', dark: '#664A3A' },
  purple: { light: '#54406A', dark: '#5F4B77' },
  pink: { light: '#A2617A', dark: '#9C607A' },
  grey: { light: '#737A79', dark: '#666D6C' },
  white: { light: '#F7F8F6', dark: '#C4C9C5' },
  beige: { light: '#B5A888', dark: '#A4987B' },
  clear: { light: '#CBD3D1', dark: '#2A3132', heavyOutline: true },
} satisfies Record<string, Muted>;

type Hue = keyof typeof MUTED;

/** Words that people write for each; the first known word of the recorded text counts ('dark blue, white print' is blue). */
const WORDS: Record<Hue, string[]> = {
  black: ['black', 'blk', 'bk'],
  red: ['red', 'crimson', 'maroon', 'burgundy', 'scarlet'],
  blue: ['blue', 'navy', 'bl'],
  green: ['green', 'grn', 'olive'],
  teal: ['teal', 'turquoise', 'cyan', 'aqua'],
  yellow: ['yellow', 'gold', 'golden', 'ylw'],
  orange: ['orange', 'amber'],
  brown: ['brown', 'tan', 'chocolate'],
  purple: ['purple', 'violet', 'lilac'],
  pink: ['pink', 'magenta'],
  grey: ['grey', 'gray', 'silver', 'gunmetal', 'anthracite'],
  white: ['white'],
  beige: ['beige', 'ivory', 'cream', 'natural'],
  clear: ['clear', 'transparent', 'translucent'],
};

const HUE_OF_WORD = new Map<string, Hue>(
  (Object.keys(WORDS) as Hue[]).flatMap((hue) => WORDS[hue].map((word) => [word, hue] as const)),
);

export interface JacketColour {
  fill: string;
  outline: string;
  /** px */
  outlineWidth: number;
  /** The hue that was understood; null when no colour was recorded or the word is not known. */
  hue: string | null;
}

/**
 * The muted colour of a jacket from its recorded name (`black`, `Dark Blue`, `red w/ white print`).
 * A name that is empty or unknown gives the colourless `sunk` of the theme and `hue: null`.
 */
export function jacketColour(name: string, theme: Theme): JacketColour {
  const hue = hueOf(name);
  if (hue === null) return { fill: theme.sunk, outline: theme.jacketEdge, outlineWidth: 1, hue };
  const muted: Muted = MUTED[hue];
  return {
    fill: theme.name === 'variables' ? `var(--jacket-${hue})` : theme.name === 'dark' ? muted.dark : muted.light,
    outline: theme.jacketEdge,
    outlineWidth: muted.heavyOutline === true ? 2 : 1,
    hue,
  };
}

/** The declarations of the jacket variables for a scheme (`--jacket-black:#2F3436;…`). */
export function jacketDeclarations(scheme: 'light' | 'dark'): string {
  return (Object.keys(MUTED) as Hue[]).map((hue) => `--jacket-${hue}:${MUTED[hue][scheme]};`).join('');
}

function hueOf(name: string): Hue | null {
  for (const word of name.toLowerCase().split(/[^\p{L}]+/u)) {
    const hue = HUE_OF_WORD.get(word);
    if (hue !== undefined) return hue;
  }
  return null;
}
