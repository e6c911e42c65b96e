/** What every diagram of a method is drawn with: lines, cables, tools, distances and a few words, in one box for all. */
import { jacketColour } from '../../../jacketColour.ts';
import { circle, DISPLAY, element, group, label, line, rectangle, round } from '../../../svg.ts';
import type { Theme } from '../../../theme.ts';

/** The box that each diagram fills, px of its own; a card enlarges or reduces it. */
export const BOX = { width: 800, height: 440 } as const;
/** Size of its words; a card never reduces a diagram so far that they fall below the least text of cards. */
export const WORD = 32;

export type Point = readonly [x: number, y: number];

/** Thickness of a drawn cable, and of the metal at its bare end, px. */
const CABLE = 30;
const METAL = 16;
const LINE = 3;
const HEAD = 12;

export class Pen {
  readonly theme: Theme;

  constructor(theme: Theme) {
    this.theme = theme;
  }

  line(from: Point, to: Point, { width = LINE, stroke = this.theme.ink, dash = '' } = {}): string {
    return line(from[0], from[1], to[0], to[1], {
      stroke,
      'stroke-width': width,
      'stroke-dasharray': dash === '' ? null : dash,
    });
  }

  /** A line through points, smooth where `curve` gives SVG path data. */
  path(d: string, { width = LINE, stroke = this.theme.ink, fill = 'none', dash = '' } = {}): string {
    return element('path', {
      d,
      fill,
      stroke,
      'stroke-width': width,
      'stroke-linejoin': 'round',
      'stroke-dasharray': dash === '' ? null : dash,
    });
  }

  /** A cable along path data: jacket with its outline, and bare metal where `bare` gives a path. */
  cable(d: string, bare = '', thick = CABLE): string {
    const jacket = jacketColour('black', this.theme);
    return group(
      {},
      bare === '' ? '' : this.path(bare, { width: METAL, stroke: this.theme.copper }),
      this.path(d, { width: thick + 3, stroke: this.theme.jacketEdge }),
      this.path(d, { width: thick, stroke: jacket.fill }),
    );
  }

  word(x: number, y: number, text: string, { anchor = 'middle', strong = false, quiet = false } = {}): string {
    return label(x, y, text, {
      'font-size': WORD,
      'font-weight': strong ? '600' : '400',
      'text-anchor': anchor,
      fill: quiet ? this.theme.ink2 : this.theme.ink,
    });
  }

  /** A head of an arrow at a point, looking along an angle (0 to the right, a quarter turn down). */
  private head([x, y]: Point, angle: number): string {
    const at = (turn: number): string =>
      `${round(x - HEAD * Math.cos(angle + turn))} ${round(y - HEAD * Math.sin(angle + turn))}`;
    return this.path(`M${at(0.45)} L${round(x)} ${round(y)} L${at(-0.45)}`);
  }

  arrow(from: Point, to: Point, { width = LINE, both = false } = {}): string {
    const angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
    return group(
      {},
      this.line(from, to, { width }),
      this.head(to, angle),
      both ? this.head(from, angle + Math.PI) : '',
    );
  }

  /** A distance with a foot at both ends. */
  distance(from: Point, to: Point): string {
    const upright = from[0] === to[0];
    const foot = ([x, y]: Point) => (upright ? this.line([x - 9, y], [x + 9, y]) : this.line([x, y - 9], [x, y + 9]));
    return group({}, this.line(from, to, { width: 2 }), foot(from), foot(to));
  }

  /** The window of a tool with what it shows. */
  window(x: number, y: number, width: number, shown: string): string {
    const height = 58;
    return group(
      {},
      rectangle(x, y, width, height, { fill: this.theme.sheet, stroke: this.theme.ink, 'stroke-width': LINE }),
      this.word(x + width / 2, y + height / 2 + 11, shown, { strong: true }),
    );
  }

  /** A scale: its platform, its body, and the window in it. The platform's top is at `y`. */
  scale(x: number, y: number, width: number, shown: string): string {
    const body = `M${x + 40} ${y + 32} L${x + width - 40} ${y + 32} L${x + width} ${y + 120} L${x} ${y + 120} Z`;
    return group(
      {},
      rectangle(x, y, width, 12, { fill: this.theme.sheet, stroke: this.theme.ink, 'stroke-width': LINE }),
      this.line([x + width / 2, y + 12], [x + width / 2, y + 32], { width: 12 }),
      this.path(body, { fill: this.theme.sunk }),
      this.window(x + width / 2 - 80, y + 48, 160, shown),
    );
  }

  circle(x: number, y: number, r: number, { fill = 'none', stroke = this.theme.ink, width = LINE, dash = '' } = {}) {
    return circle(x, y, r, {
      fill,
      stroke,
      'stroke-width': width,
      'stroke-dasharray': dash === '' ? null : dash,
    });
  }

  rectangle(x: number, y: number, width: number, height: number, fill = this.theme.sunk): string {
    return rectangle(x, y, width, height, { fill, stroke: this.theme.ink, 'stroke-width': LINE });
  }

  /** A letter on a tag. */
  letter(x: number, y: number, text: string): string {
    return label(x, y, text, {
      'font-size': 44,
      'font-weight': '600',
      'font-family': DISPLAY,
      'text-anchor': 'middle',
      fill: this.theme.ink,
    });
  }
}
