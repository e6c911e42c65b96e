import type { Theme } from '../../../theme.ts';
import { coilDiagram, droopDiagram, pairsDiagram, pushDiagram } from './bending.ts';
import { heatDiagram, orderDiagram } from './heatAndOrder.ts';
import { fourWiresDiagram, strandsDiagram, weighDiagram } from './inside.ts';
import { Pen } from './pen.ts';
import { wallDiagram, wearDiagram } from './wear.ts';

const DIAGRAMS: Readonly<Record<string, (pen: Pen) => string>> = {
  ohms: fourWiresDiagram,
  weigh: weighDiagram,
  strands: strandsDiagram,
  droop: droopDiagram,
  push: pushDiagram,
  coil: coilDiagram,
  pairs: pairsDiagram,
  wall: wallDiagram,
  endurance: wearDiagram,
  heat: heatDiagram,
  standing: orderDiagram,
};

/** A method as a drawing in the box of `pen.ts`: how the tools stand and what is read. No figure of any trial is in it. */
export function methodDiagram(method: string, theme: Theme): string {
  return DIAGRAMS[method]?.(new Pen(theme)) ?? '';
}
