/** Who stands where, and what the money buys, from figures made up for the pictures. */
import { chanceBar } from '../../src/report/standing/chanceBar.ts';
import { type EdgePoint, edgeChart } from '../../src/report/standing/edgeChart.ts';
import { placeBars } from '../../src/report/standing/placeBars.ts';
import { valueCurve } from '../../src/report/standing/valueCurve.ts';
import { worthStrip } from '../../src/report/standing/worthStrip.ts';
import { darkTheme, lightTheme, paperTheme } from '../../src/report/theme.ts';

const point = (name: string, x: number, y: number, onEdge: boolean): EdgePoint => ({
  name,
  x,
  y,
  xInterval: null,
  yInterval: [y - 2.5, y + 2.5],
  onEdge,
  probability: onEdge ? 1 : 0,
});

/** Two that lie close together, one with a rude name. */
const POINTS = [
  point('Harrow & Sedge', 12.2, 98, true),
  point('Brackenfell', 15.8, 102, true),
  point('Nine Elms Cord', 19.5, 100, false),
  point('<b>Quill</b>', 9.9, 85, true),
  point('Saltmarsh', 10.1, 84, false),
];
const AXES = {
  x: { name: 'Price', unit: 'EUR/m', better: 'less' },
  y: { name: 'Copper of the label’s', unit: '%', better: 'more' },
} as const;

const curve = (shape: 'linear' | 'flat' | 'threshold', worst: number, best: number, low: string, high: string) =>
  valueCurve(
    { shape, worst, best },
    {
      width: 168,
      height: 84,
      theme: lightTheme,
      ends: { low, high },
      description: `${shape} from ${worst} to ${best}`,
    },
  );

export const STANDING_PICTURES: Readonly<Record<string, () => string>> = {
  'standing-places.svg': () => placeBars([0.626, 0.314, 0.056, 0.004, 0, 0], { width: 444, theme: lightTheme }),
  'standing-places-dark.svg': () => placeBars([0.001, 0.123, 0.55, 0.326], { width: 160, theme: darkTheme }),
  'standing-edge.svg': () => edgeChart(POINTS, AXES, { width: 560, theme: lightTheme }),
  'standing-edge-phone-dark.svg': () => edgeChart(POINTS, AXES, { width: 354, theme: darkTheme }),
  'standing-curve-linear.svg': () => curve('linear', 25, 2.8, '2.8', '25'),
  'standing-curve-flat.svg': () => curve('flat', 0.7, 1, '70', '100'),
  'standing-curve-threshold.svg': () => curve('threshold', 0, 0.98, '0', '0.98'),
  'standing-worth.svg': () =>
    worthStrip(0.66, { width: 200, theme: paperTheme, known: true, description: 'Copper: two thirds of the way' }),
  'standing-worth-unknown.svg': () =>
    worthStrip(0.5, { width: 200, theme: paperTheme, known: false, description: 'Wall: not measured' }),
  'standing-chance.svg': () => chanceBar(0.63, { width: 120, theme: lightTheme }),
};
