import { flowOf } from './flow.ts';
import { CORNERS } from './path.ts';
import type { RunCable, RunQuestion } from './question.ts';

/** One cable's curve against the length of the run. */
export interface RunCurve {
  id: string;
  name: string;
  measured: boolean;
  /** m one way; NaN figures where nothing comes through. */
  points: { length: number; drop: number; dropLow: number; dropHigh: number; kelvin: number; kelvinHigh: number }[];
}

/** Points of a curve. */
const POINTS = 12;

/** Lengths from near nothing to twice the run, m; the way back keeps step when it is the same cable. */
function lengthsFor(q: RunQuestion): number[] {
  return Array.from({ length: POINTS }, (_, i) => (2 * q.length * (i + 1)) / POINTS);
}

function questionAt(q: RunQuestion, length: number): RunQuestion {
  const back = q.back.kind === 'same cable' ? { ...q.back, length: (q.back.length * length) / q.length } : q.back;
  return { ...q, length, back };
}

/** Drop, as a share of the resting supply, and hottest conductor against length for every cable: the data of the chart. */
export function runCurves(q: RunQuestion, cables: readonly RunCable[], installed: RunCable | null): RunCurve[] {
  const questions = lengthsFor(q).map((length) => questionAt(q, length));
  return cables.map((cable) => {
    const corners = cable.measured ? CORNERS : CORNERS.slice(0, 1);
    const near: (number | undefined)[] = corners.map(() => undefined);
    const points = questions.map((at) => {
      const flows = corners.map((corner, k) => {
        const flow = flowOf(at, cable, q.supply.resting, { corner, runs: 1, installed, near: near[k] });
        if (typeof flow === 'string') return null;
        near[k] = flow.temperature;
        return flow;
      });
      const drops = flows.map((f) => (f ? f.lost / q.supply.resting : Number.NaN));
      const kelvins = flows.map((f) => f?.hottest ?? Number.NaN);
      return {
        length: at.length,
        drop: drops[0],
        dropLow: Math.min(...drops),
        dropHigh: Math.max(...drops),
        kelvin: kelvins[0],
        kelvinHigh: Math.max(...kelvins),
      };
    });
    return { id: cable.id, name: cable.name, measured: cable.measured, points };
  });
}
