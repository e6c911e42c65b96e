import { DISPLAY, element, escapeText, group, label, line, rectangle, SANS, svgDocument } from '../../svg.ts';
import type { Theme } from '../../theme.ts';

/** Sizes of cards, px. */
export const CARD_SIZES = ['1920x1080', '3840x2160', '1080x1920', '1080x1080'] as const;
export type CardSize = (typeof CARD_SIZES)[number];

export type CardShape = 'wide' | 'tall' | 'square';

/** Where text may stand on a card: film players and phones cover what lies outside. */
export interface SafeArea {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

interface Format {
  shape: CardShape;
  /** Size that the card is laid out in; larger ones are the same drawing enlarged. */
  width: number;
  height: number;
  enlarged: number;
  safe: SafeArea;
}

const WIDE = {
  shape: 'wide',
  width: 1920,
  height: 1080,
  safe: { left: 96, right: 1824, top: 54, bottom: 1026 },
} as const;

export const FORMATS: Readonly<Record<CardSize, Format>> = {
  '1920x1080': { ...WIDE, enlarged: 1 },
  '3840x2160': { ...WIDE, enlarged: 2 },
  '1080x1920': {
    shape: 'tall',
    width: 1080,
    height: 1920,
    enlarged: 1,
    safe: { left: 64, right: 976, top: 180, bottom: 1620 },
  },
  '1080x1080': {
    shape: 'square',
    width: 1080,
    height: 1080,
    enlarged: 1,
    safe: { left: 64, right: 1016, top: 64, bottom: 1016 },
  },
};

/** Least size of text, and of a name, px of the layout. */
export const LEAST_TEXT = 24;
export const LEAST_NAME = 28;
/** Light edge round text and lines where the ground is left out. */
const CASING = 6;

export interface TextLook {
  size: number;
  weight?: '400' | '600' | '700';
  fill?: string;
  anchor?: 'start' | 'middle' | 'end';
  display?: boolean;
}

/** What a card is drawn with: its format, its colours, and whether the ground is left out. */
export class Canvas {
  readonly format: Format;
  readonly theme: Theme;
  readonly transparent: boolean;

  constructor(size: CardSize, theme: Theme, transparent: boolean) {
    this.format = FORMATS[size];
    this.theme = theme;
    this.transparent = transparent;
  }

  get safe(): SafeArea {
    return this.format.safe;
  }

  /** Second text: as strong as the first where there is no ground to stand on. */
  get quiet(): string {
    return this.transparent ? this.theme.ink : this.theme.ink2;
  }

  /** Text with a light edge below it where there is no ground: the whole edge first, so that no letter's edge covers another letter. */
  private cased(draw: (more: Readonly<Record<string, string | number>>) => string): string {
    if (!this.transparent) return draw({});
    const { ground } = this.theme;
    return draw({ stroke: ground, 'stroke-width': CASING, 'stroke-linejoin': 'round' }) + draw({});
  }

  text(
    x: number,
    y: number,
    typed: string,
    { size, weight = '400', fill, anchor = 'start', display }: TextLook,
  ): string {
    return this.cased((more) =>
      label(x, y, typed, {
        'font-size': size,
        'font-weight': weight,
        'font-family': display ? DISPLAY : SANS,
        'text-anchor': anchor,
        fill: fill ?? this.theme.ink,
        ...more,
      }),
    );
  }

  /** A line of several strengths: `28.6` strong, `± 0.3 mm²` after it. */
  runs(
    x: number,
    y: number,
    parts: readonly { text: string; size: number; weight?: string; fill?: string }[],
    anchor = 'start',
  ): string {
    const shown = parts.filter(({ text }) => text !== '');
    return this.cased((more) =>
      element(
        'text',
        { x, y, 'font-family': SANS, 'text-anchor': anchor, 'xml:space': 'preserve', ...more },
        ...shown.map(({ text, size, weight = '400', fill = this.theme.ink }, i) =>
          element('tspan', { 'font-size': size, 'font-weight': weight, fill }, escapeText(i === 0 ? text : ` ${text}`)),
        ),
      ),
    );
  }

  line(x1: number, y1: number, x2: number, y2: number, width = 2, stroke = this.theme.ink): string {
    const drawn = line(x1, y1, x2, y2, { stroke, 'stroke-width': width });
    if (!this.transparent) return drawn;
    return line(x1, y1, x2, y2, { stroke: this.theme.ground, 'stroke-width': width + CASING }) + drawn;
  }

  /** The whole card, its ground under it unless that is left out. */
  card(description: string, ...children: readonly string[]): string {
    const { width, height } = this.format;
    const ground = this.transparent ? '' : rectangle(0, 0, width, height, { fill: this.theme.ground });
    return this.overlay(description, ground, ...children);
  }

  /** A card with no ground of its own, whatever was asked: to be laid over a film. */
  overlay(description: string, ...children: readonly string[]): string {
    const { width, height, enlarged } = this.format;
    const inside = group({}, ...children);
    if (enlarged === 1) return svgDocument({ width, height, description }, inside);
    return svgDocument(
      { width: width * enlarged, height: height * enlarged, description },
      group({ transform: `scale(${enlarged})` }, inside),
    );
  }
}
