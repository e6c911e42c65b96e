import { scaleLinear } from 'd3-scale';
import type { DrawnFourWire } from '../../findings/current/drawn.ts';
import { circle, line, svgDocument } from '../svg.ts';
import type { Theme } from '../theme.ts';
import { plotFrame, type Sides } from './plotFrame.ts';

export interface FourWirePicture {
  reading: DrawnFourWire;
  /** Ω and V: the line through the points; null where none comes out. */
  resistance: number | null;
  emf: number | null;
}

const SIDES: Sides = { left: 52, right: 16, top: 24, bottom: 38 };
const MILLI = 1e3;
const DOT = 4;

/** Voltage over current of one piece, both ways round, with the line whose slope is its resistance. mV, A. */
export function fourWirePlot(
  { reading, resistance, emf }: FourWirePicture,
  { width, height, theme }: { width: number; height: number; theme: Theme },
): string {
  const currents = [0, ...reading.points.map((p) => p.current)];
  const volts = [0, ...reading.points.map((p) => p.voltage * MILLI)];
  const padded = (values: number[]): [number, number] => {
    const [low, high] = [Math.min(...values), Math.max(...values)];
    const pad = 0.08 * (high - low || 1);
    return [low < 0 ? low - pad : 0, high > 0 ? high + pad : 0];
  };
  const x = scaleLinear()
    .domain(padded(currents))
    .range([SIDES.left, width - SIDES.right]);
  const y = scaleLinear()
    .domain(padded(volts))
    .range([height - SIDES.bottom, SIDES.top]);
  const [from, to] = x.domain() as [number, number];
  const at = (current: number) => (resistance! * current + (emf ?? 0)) * MILLI;
  return svgDocument(
    { width, height, description: describeFourWire({ reading, resistance, emf }) },
    plotFrame({ x, y, width, height, sides: SIDES, unit: { x: 'A', y: 'mV' }, theme }),
    line(x(0), y.range()[0]!, x(0), y.range()[1]!, { stroke: theme.edge, 'stroke-width': 1 }),
    line(SIDES.left, y(0), width - SIDES.right, y(0), { stroke: theme.edge, 'stroke-width': 1 }),
    resistance === null
      ? ''
      : line(x(from), y(at(from)), x(to), y(at(to)), { stroke: theme.copper, 'stroke-width': 2.5 }),
    ...reading.points.map((p) => circle(x(p.current), y(p.voltage * MILLI), DOT, { fill: theme.ink })),
  );
}

/** All that the picture shows, as one text. */
export function describeFourWire({ reading, resistance, emf }: FourWirePicture): string {
  const points = reading.points.map((p) => `${(p.voltage * MILLI).toPrecision(4)} mV at ${p.current.toPrecision(3)} A`);
  const slope = resistance === null ? '' : `; the slope is ${(resistance * MILLI).toPrecision(4)} mΩ`;
  const offset = emf === null ? '' : `, ${(emf * 1e6).toFixed(0)} µV without current`;
  return `${reading.specimen}: ${points.join(', ')}${slope}${offset}.`;
}
