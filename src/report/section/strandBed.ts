import { round } from '../svg.ts';

/** Layer height over strand diameter: strands lie a little apart. */
const LOOSENESS = 1.06;
/** Line width as a share of the layer height, and the least that still prints, px. */
const LINE_SHARE = 0.12;
const LEAST_LINE = 0.6;
/** More circles than this are grain, not strands, and weigh more than the rest of the picture. */
const MOST_CIRCLES = 1600;

export interface StrandBed {
  /** One path of whole circles. */
  path: string;
  /** px */
  lineWidth: number;
}

/**
 * Strands between `from` and `to` (px): concentric layers of whole circles, alternate layers turned half a step.
 * They show the texture of the bundle, not the number of strands. Null when there is no room, or too many to part.
 */
export function strandBed(cx: number, cy: number, from: number, to: number, strandDiameter: number): StrandBed | null {
  const room = to - from;
  if (!(room > 0) || !(strandDiameter > 0)) return null;
  const layers = Math.max(1, Math.round(room / (LOOSENESS * strandDiameter)));
  const height = room / layers;
  // Circles in a ring of area π(to² − from²), one per square of the layer height.
  if ((Math.PI * (to * to - from * from)) / (height * height) > MOST_CIRCLES) return null;
  const lineWidth = Math.max(LEAST_LINE, LINE_SHARE * height);
  const radius = Math.max(0.2, (height - lineWidth) / 2);
  const parts: string[] = [];
  for (let layer = 0; layer < layers; layer++) {
    const r = from + (layer + 0.5) * height;
    const count = Math.max(1, Math.floor((2 * Math.PI * r) / height));
    const turn = layer % 2 === 0 ? 0 : 0.5;
    for (let i = 0; i < count; i++) {
      const angle = ((i + turn) / count) * 2 * Math.PI - Math.PI / 2;
      parts.push(wholeCircle(cx + r * Math.cos(angle), cy + r * Math.sin(angle), radius));
    }
  }
  return { path: parts.join(''), lineWidth };
}

function wholeCircle(x: number, y: number, r: number): string {
  const [r1, d] = [round(r), round(2 * r)];
  return `M${round(x - r)} ${round(y)}a${r1} ${r1} 0 1 0 ${d} 0a${r1} ${r1} 0 1 0 -${d} 0`;
}
