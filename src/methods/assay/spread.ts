import { commonInputs } from './hypothesis.ts';
import type { AssayComponent, CableAssay, JointAssay } from './joint.ts';

/** One source of the ± of the area, and its share of the variance. */
export interface SpreadShare {
  input: string;
  label: string;
  share: number;
  /** True when the source is an instrument's limit that was assumed. */
  assumed: boolean;
}

/** Sources smaller than this share are told together. */
const LEAST_SHOWN = 0.0005;

const PRIORS: readonly [string, string][] = [
  ['area', 'Nothing else known'],
  ['lay', 'Lay of the strands'],
  ['metal density', 'Density of the metal'],
  ['metal resistivity', 'Resistivity of the metal'],
];

function addShare(shares: Map<string, SpreadShare>, input: string, label: string, variance: number, assumed = false) {
  const seen = shares.get(input);
  if (seen) seen.share += variance;
  else shares.set(input, { input, label, share: variance, assumed });
}

function addComponent(shares: Map<string, SpreadShare>, assay: CableAssay, c: AssayComponent, joint: JointAssay): void {
  const { n, G, S, P } = c.system;
  const { gain } = c.answer;
  const nb = joint.inputs.length;
  const w = c.weight;
  PRIORS.forEach(([input, label], k) => {
    let left = k === 0 ? 1 : 0;
    for (let i = 0; i < n; i++) left -= gain[i] * G[i * 4 + k];
    addShare(shares, input, label, w * left * left * P[k]);
  });
  const moves = new Map<string, { label: string; moved: number; variance: number }>();
  assay.cable.rows.forEach((row, i) => {
    for (const own of row.own) {
      const seen = moves.get(own.input);
      if (seen) seen.moved += gain[i] * own.slope;
      else moves.set(own.input, { label: own.label, moved: gain[i] * own.slope, variance: own.variance });
    }
  });
  // Labels, not inputs, so that the scatter of three specimens is one line.
  for (const m of moves.values()) addShare(shares, m.label, m.label, w * m.moved ** 2 * m.variance);
  const leans = new Float64Array(nb);
  for (let i = 0; i < n; i++) for (let k = 0; k < nb; k++) leans[k] += gain[i] * S[i * nb + k];
  joint.inputs.forEach((input, k) => {
    if (leans[k] === 0) return;
    let v = 0;
    for (let l = 0; l < nb; l++) v += assay.others.cov[k * nb + l] * leans[l];
    addShare(shares, input.input, input.label, Math.max(w * leans[k] * v, 0), input.assumed);
  });
}

/** Folds the constants that cables have in common into the metal and the lay, where a reader looks for them. */
function foldCommon(shares: Map<string, SpreadShare>): void {
  const into: Record<string, string> = {
    'copper density': 'metal density',
    'copper resistivity': 'metal resistivity',
    'usual lay': 'lay',
  };
  for (const { input } of commonInputs()) {
    const part = shares.get(input);
    const whole = shares.get(into[input]);
    if (part && whole) {
      whole.share += part.share;
      shares.delete(input);
    }
  }
}

/**
 * What the ± of the area is made of: shares of the variance of ln A by input, largest first, summing to 1. Not knowing
 * which metal, or whether a reading is grossly wrong, is a share of its own.
 *
 * Source of the idea: the uncertainty budget of JCGM 100:2008, 5.1 and H.1.
 */
export function spreadOfArea(joint: JointAssay, assay: CableAssay): SpreadShare[] {
  const shares = new Map<string, SpreadShare>();
  let mean = 0;
  for (const c of assay.components) mean += c.weight * c.answer.x[0];
  let between = 0;
  for (const c of assay.components) {
    between += c.weight * (c.answer.x[0] - mean) ** 2;
    addComponent(shares, assay, c, joint);
  }
  if (assay.components.length > 1)
    addShare(shares, 'which metal', 'Which metal it is, and whether a reading is wrong', between);
  foldCommon(shares);
  const total = [...shares.values()].reduce((sum, s) => sum + s.share, 0);
  const all = [...shares.values()].map((s) => ({ ...s, share: s.share / total }));
  const shown = all.filter((s) => s.share >= LEAST_SHOWN);
  const rest = 1 - shown.reduce((sum, s) => sum + s.share, 0);
  shown.sort((a, b) => b.share - a.share || (a.input < b.input ? -1 : 1));
  return rest > 1e-12
    ? [...shown, { input: 'everything else', label: 'Everything else', share: rest, assumed: false }]
    : shown;
}
