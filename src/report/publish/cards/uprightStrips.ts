import { ruledRectangle } from '../../hatch.ts';
import { positionOn } from '../../intervalAxis.ts';
import { isRuled, metalFill } from '../../metalKind.ts';
import { element, group, rectangle } from '../../svg.ts';
import type { Shown } from './aspects.ts';
import type { Canvas } from './canvas.ts';
import { axisOf } from './pieces.ts';

/** Width of an upright interval and of its estimate's tick, px. */
const BAR = 40;
const TICK = 76;
const RULING = 8;
/** An interval narrower than this could not be seen, px. */
const LEAST_BAR = 8;

/** Intervals turned upright under their cut faces, the claim's limit and the label's figure as lines through all of them. */
export function uprightStrips(canvas: Canvas, shown: readonly Shown[], top: number, height: number): string {
  const { safe, theme } = canvas;
  const axis = axisOf(shown);
  if (axis === null) return '';
  const at = positionOn(axis, height);
  const y = (value: number) => top + height - at(value);
  const column = (safe.right - safe.left) / shown.length;
  const lines = [
    ...(axis.nominal === null || axis.nominal === axis.limit
      ? []
      : [
          element('line', {
            x1: safe.left,
            y1: y(axis.nominal),
            x2: safe.right,
            y2: y(axis.nominal),
            stroke: theme.edge,
            'stroke-width': 2,
            'stroke-dasharray': '8 8',
          }),
        ]),
    ...(axis.limit === null ? [] : [canvas.line(safe.left, y(axis.limit), safe.right, y(axis.limit), 3)]),
  ];
  const bars = shown.map(({ figure, metal }, i) => {
    const x = safe.left + (i + 0.5) * column;
    const stem = canvas.line(x, top, x, top + height, 1, theme.rule);
    if (figure === null) return stem;
    const [low, high] = [y(figure.interval[0]), y(figure.interval[1])];
    const tall = Math.max(LEAST_BAR, low - high);
    const head = (low + high - tall) / 2;
    const fill = metalFill(metal, theme);
    return group(
      {},
      stem,
      rectangle(x - BAR / 2, head, BAR, tall, {
        fill: fill ?? theme.bed,
        stroke: fill ? null : theme.edge,
        'stroke-width': 2,
      }),
      isRuled(metal)
        ? element('path', {
            d: ruledRectangle(x - BAR / 2, head, BAR, tall, RULING, 'rising'),
            stroke: theme.bed,
            'stroke-width': 2,
            fill: 'none',
          })
        : '',
      canvas.line(x - TICK / 2, y(figure.value), x + TICK / 2, y(figure.value), 4),
    );
  });
  return group({}, ...lines, ...bars, ...words(canvas, axis.limit, axis.nominal, y));
}

/** `limit 32.96` under its line, `label 33.63` over its own, at the right. */
function words(canvas: Canvas, limit: number | null, nominal: number | null, y: (value: number) => number): string[] {
  const { safe } = canvas;
  const write = (x: number) => String(Number(x.toPrecision(4)));
  return [
    limit === null
      ? ''
      : canvas.text(safe.right, y(limit) + 30, `limit ${write(limit)}`, { size: 24, weight: '600', anchor: 'end' }),
    nominal === null || nominal === limit
      ? ''
      : canvas.text(safe.right, y(nominal) - 10, `label ${write(nominal)}`, {
          size: 24,
          fill: canvas.quiet,
          anchor: 'end',
        }),
  ];
}
