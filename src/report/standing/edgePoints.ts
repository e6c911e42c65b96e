import type { Findings, Measured } from '../../findings/schema.ts';
import type { Decide, EdgePicture } from '../../findings/shapes/decide.ts';
import { inPercent, unitOf } from './criterionWords.ts';
import type { EdgeAxes, EdgePoint } from './edgeChart.ts';

const WHOLE = 100;

/** The interval that the findings tell for a figure of an edge; null for a price and for what they do not tell. */
function intervalOf(findings: Findings, cable: string, criterion: string): Measured | null {
  const found = findings.cables.find((c) => c.cable === cable);
  if (criterion === 'copper') return found?.copper_of_claim ?? null;
  if (criterion === 'resistance') return found?.resistance_20C ?? null;
  if (criterion === 'wall') return found?.wall?.least ?? found?.wall?.mean ?? null;
  if (criterion === 'stiffness') return findings.flex?.cables.find((c) => c.cable === cable)?.bending_stiffness ?? null;
  return null;
}

/** A picture of the findings as points and axes to be drawn; intervals stand about the figure that is drawn. */
export function edgePoints(
  edge: EdgePicture,
  decide: Decide,
  findings: Findings,
): { points: EdgePoint[]; axes: EdgeAxes } | null {
  const axis = (id: string) => {
    const criterion = decide.criteria.find((c) => c.id === id);
    if (!criterion) return null;
    const unit = unitOf(criterion);
    return {
      name: criterion.name.replace(', of what the label claims', ' of the label’s'),
      unit,
      better: criterion.better,
    };
  };
  const [x, y] = [axis(edge.a), axis(edge.b)];
  if (!x || !y) return null;
  const times = (id: string) => (inPercent({ id }) ? WHOLE : 1);
  const about = (cable: string, id: string, value: number): [number, number] | null => {
    const measured = intervalOf(findings, cable, id);
    if (!measured || !(measured.value > 0)) return null;
    const ratio = value / measured.value;
    return [measured.interval[0] * ratio * times(id), measured.interval[1] * ratio * times(id)];
  };
  const name = (cable: string) => decide.cables.find((c) => c.cable === cable)?.name || cable;
  const points = edge.cables.map((c) => ({
    name: name(c.cable),
    x: c.a * times(edge.a),
    y: c.b * times(edge.b),
    xInterval: about(c.cable, edge.a, c.a),
    yInterval: about(c.cable, edge.b, c.b),
    onEdge: c.on_edge,
    probability: c.probability,
  }));
  return { points, axes: { x, y } };
}
