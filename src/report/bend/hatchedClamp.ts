import { ruledRectangle } from '../hatch.ts';
import { element, group, rectangle } from '../svg.ts';
import type { Theme } from '../theme.ts';

interface ClampOptions {
  /** Left end, and the level of the cable's middle. px */
  x: number;
  y: number;
  width: number;
  /** How thick the cable in it is drawn. px */
  thick: number;
  theme: Theme;
}

const JAW = 12;

/** A clamp as two ruled jaws above and below the cable, with the cable's end between them. */
export function hatchedClamp({ x, y, width, thick, theme }: ClampOptions): string {
  const jaw = (top: number) =>
    group(
      {},
      rectangle(x, top, width, JAW, { fill: theme.sheet, stroke: theme.ink, 'stroke-width': 1.5 }),
      element('path', {
        d: ruledRectangle(x, top, width, JAW, 5, 'falling'),
        stroke: theme.ink,
        'stroke-width': 1,
        fill: 'none',
      }),
    );
  const held = rectangle(x, y - thick / 2, width, thick, { fill: theme.sunk, stroke: theme.edge, 'stroke-width': 1 });
  return group({}, held, jaw(y - thick / 2 - JAW), jaw(y + thick / 2));
}
