/**
 * The assay a second time, done the slow way: every unknown of every cable and every tool's error stand in one big Gaussian,
 * which is conditioned on all readings at once by Gaussian elimination; every combination of suppositions is tried in
 * turn, and the answers are mixed by their probabilities. Shares no code with the program.
 */
import type { AssayCable, SharedInput } from '../../../src/methods/assay/row.ts';
import type { MetalHypothesis } from '../../../src/methods/metal/hypotheses.ts';

type Matrix = number[][];

/** What the design states about unknowns before a reading is taken; written out again here on purpose. */
const PRIOR = {
  lnArea: { mean: Math.log(30e-6), variance: 4 },
  lnLay: { mean: 0.034, variance: 0.018 ** 2, common: 0.006 ** 2 },
  solidLay: { mean: 0, variance: 0.0005 ** 2 },
  commonDensity: 0.0015 ** 2,
  commonResistivity: 0.003 ** 2,
  faultOdds: { none: 0.925, mass: 0.015, resistance: 0.03, strands: 0.03 },
  faultMean: { mass: 0, resistance: 0.2, strands: 0 },
  faultVariance: { mass: 0.0625, resistance: 0.09, strands: 0.0625 },
};
type FaultName = 'mass' | 'resistance' | 'strands';

const DESIGN: Record<string, readonly number[]> = {
  mass: [1, 1, 1, 0],
  resistance: [-1, 1, 0, 1],
  strands: [1, 0, 0, 0],
  'strand mass': [1, 0, 1, 0],
  lay: [0, 1, 0, 0],
  density: [0, 0, 1, 0],
};
const SPOILT_WITH: Record<string, FaultName | null> = {
  mass: 'mass',
  resistance: 'resistance',
  strands: 'strands',
  'strand mass': 'strands',
  lay: null,
  density: null,
};

export interface Supposed {
  metal: MetalHypothesis;
  fault: FaultName | null;
  lnOdds: number;
}

/** Every metal with no fault, and with each fault that these rows could have. */
export function supposedOf(cable: AssayCable, metals: readonly MetalHypothesis[]): Supposed[] {
  const groups = new Set(cable.rows.flatMap((row) => SPOILT_WITH[row.kind] ?? []));
  const faults: (FaultName | null)[] = [
    null,
    ...(['mass', 'resistance', 'strands'] as const).filter((f) => groups.has(f)),
  ];
  return metals.flatMap((metal) =>
    faults.map((fault) => ({
      metal,
      fault,
      lnOdds: Math.log(metal.prior) + cable.sight[metal.metal] + Math.log(PRIOR.faultOdds[fault ?? 'none']),
    })),
  );
}

/** Solves a · x = b for several right-hand sides, with row exchanges; returns x and ln |det a|. */
export function eliminate(a: Matrix, b: Matrix): { x: Matrix; lnDet: number } {
  const n = a.length;
  const work = a.map((row, i) => [...row, ...b[i]]);
  let lnDet = 0;
  for (let c = 0; c < n; c++) {
    let pivot = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(work[r][c]) > Math.abs(work[pivot][c])) pivot = r;
    [work[c], work[pivot]] = [work[pivot], work[c]];
    lnDet += Math.log(Math.abs(work[c][c]));
    for (let r = 0; r < n; r++) {
      if (r === c) continue;
      const factor = work[r][c] / work[c][c];
      if (factor !== 0) for (let k = c; k < work[r].length; k++) work[r][k] -= factor * work[c][k];
    }
  }
  return { x: work.map((row, i) => row.slice(n).map((v) => v / row[i])), lnDet };
}

export interface DenseAnswer {
  lnEvidence: number;
  /** Unknowns in order: four for each cable, then the tools' errors in standard deviations. */
  mean: number[];
  cov: Matrix;
}

/** Prior of all unknowns at once: what cables have in common stands as a covariance between them. */
export function priorOf(cables: readonly AssayCable[], supposed: readonly Supposed[], inputs: readonly SharedInput[]) {
  const size = 4 * cables.length + inputs.length;
  const mean = new Array<number>(size).fill(0);
  const cov: Matrix = mean.map(() => new Array<number>(size).fill(0));
  cables.forEach((cable, c) => {
    const { metal } = supposed[c];
    const lay = cable.control ? PRIOR.solidLay : PRIOR.lnLay;
    [PRIOR.lnArea, lay].forEach((p, k) => {
      mean[4 * c + k] = p.mean;
      cov[4 * c + k][4 * c + k] = p.variance;
    });
    mean[4 * c + 2] = metal.lnDensity.mean;
    mean[4 * c + 3] = metal.lnResistivity.mean;
    cov[4 * c + 2][4 * c + 2] = metal.lnDensity.sd ** 2;
    cov[4 * c + 3][4 * c + 3] = metal.lnResistivity.sd ** 2;
    for (let d = 0; d < c; d++) {
      const both = (k: number, v: number) => {
        cov[4 * c + k][4 * d + k] = v;
        cov[4 * d + k][4 * c + k] = v;
      };
      if (!cable.control && !cables[d].control) both(1, PRIOR.lnLay.common);
      if (metal.sharesCopperConstants && supposed[d].metal.sharesCopperConstants) {
        both(2, PRIOR.commonDensity);
        both(3, PRIOR.commonResistivity);
      }
    }
  });
  for (let k = 4 * cables.length; k < size; k++) cov[k][k] = 1;
  return { mean, cov };
}

export interface Observed {
  y: number[];
  design: Matrix;
  noise: Matrix;
}

/** All rows of all cables as one set of linear equations. */
export function observe(
  cables: readonly AssayCable[],
  supposed: readonly Supposed[],
  inputs: readonly SharedInput[],
): Observed {
  const size = 4 * cables.length + inputs.length;
  const place = (name: string) => 4 * cables.length + inputs.findIndex((input) => input.input === name);
  const sdOf = (name: string) => inputs.find((input) => input.input === name)!.sd;
  const all = cables.flatMap((cable, c) => cable.rows.map((row) => ({ row, c })));
  const y: number[] = [];
  const design: Matrix = [];
  for (const { row, c } of all) {
    const line = new Array<number>(size).fill(0);
    DESIGN[row.kind].forEach((g, k) => {
      line[4 * c + k] = g;
    });
    for (const e of row.shared) line[place(e.input)] += e.power * e.slope * sdOf(e.input);
    let value = row.y;
    const { metal, fault } = supposed[c];
    if (row.temperature) {
      const factor = 1 + metal.alpha * row.temperature.above20;
      value -= Math.log(factor);
      line[place(row.temperature.input)] += (metal.alpha / factor) * sdOf(row.temperature.input);
    }
    if (fault !== null && SPOILT_WITH[row.kind] === fault) value -= PRIOR.faultMean[fault];
    y.push(value);
    design.push(line);
  }
  const noise = all.map((a) =>
    all.map((b) => {
      if (a.c !== b.c) return 0;
      let v = 0;
      for (const p of a.row.own)
        for (const q of b.row.own) if (p.input === q.input) v += p.slope * q.slope * p.variance;
      const { fault } = supposed[a.c];
      if (fault && SPOILT_WITH[a.row.kind] === fault && SPOILT_WITH[b.row.kind] === fault)
        v += PRIOR.faultVariance[fault];
      return v;
    }),
  );
  return { y, design, noise };
}

const times = (a: Matrix, b: Matrix): Matrix =>
  a.map((row) => b[0].map((_, j) => row.reduce((s, v, k) => s + v * b[k][j], 0)));
const turned = (a: Matrix): Matrix => a[0].map((_, j) => a.map((row) => row[j]));

/** Conditions the one big Gaussian on all readings, for one fixed supposition about each cable. */
export function denseAnswer(
  cables: readonly AssayCable[],
  supposed: readonly Supposed[],
  inputs: readonly SharedInput[],
): DenseAnswer {
  const prior = priorOf(cables, supposed, inputs);
  const { y, design, noise } = observe(cables, supposed, inputs);
  const across = times(prior.cov, turned(design));
  const spread = times(design, across).map((row, i) => row.map((v, j) => v + noise[i][j]));
  const surprise = y.map((v, i) => [v - design[i].reduce((s, g, k) => s + g * prior.mean[k], 0)]);
  const { x, lnDet } = eliminate(
    spread,
    surprise.map((row, i) => [...row, ...turned(across)[i]]),
  );
  const chi2 = surprise.reduce((s, [r], i) => s + r * x[i][0], 0);
  const cut = times(
    across,
    x.map((row) => row.slice(1)),
  );
  return {
    lnEvidence: -0.5 * (chi2 + lnDet + y.length * Math.log(2 * Math.PI)),
    mean: prior.mean.map((m, k) => m + across[k].reduce((s, v, i) => s + v * x[i][0], 0)),
    cov: prior.cov.map((row, k) => row.map((v, l) => v - cut[k][l])),
  };
}

export interface ExactMixture {
  /** Cable by cable: the probability of each supposition, in the order of {@link supposedOf}. */
  weights: number[][];
  /** Mean and covariance of ln A of all cables. */
  mean: number[];
  cov: Matrix;
  /** Cable by cable: ln A as a mixture over all combinations. */
  lnAreas: { weight: number; mean: number; sd: number; dof: number }[][];
}

/** Every combination of suppositions, weighed and mixed: exact, and hopeless for more than two or three cables. */
export function exactMixture(
  cables: readonly AssayCable[],
  inputs: readonly SharedInput[],
  metals: readonly MetalHypothesis[],
): ExactMixture {
  const lists = cables.map((cable) => supposedOf(cable, metals));
  const picks = lists.reduce<number[][]>((all, list) => all.flatMap((p) => list.map((_, i) => [...p, i])), [[]]);
  const answers = picks.map((pick) => {
    const supposed = pick.map((i, c) => lists[c][i]);
    const answer = denseAnswer(cables, supposed, inputs);
    const areas = cables.map((_, c) => 4 * c);
    return {
      pick,
      ln: answer.lnEvidence + supposed.reduce((s, each) => s + each.lnOdds, 0),
      mean: areas.map((k) => answer.mean[k]),
      cov: areas.map((k) => areas.map((l) => answer.cov[k][l])),
    };
  });
  const best = Math.max(...answers.map((a) => a.ln));
  const total = answers.reduce((s, a) => s + Math.exp(a.ln - best), 0);
  const weights = lists.map((list) => new Array<number>(list.length).fill(0));
  const mean = cables.map(() => 0);
  const second: Matrix = cables.map(() => cables.map(() => 0));
  const lnAreas: ExactMixture['lnAreas'] = cables.map(() => []);
  for (const a of answers) {
    const w = Math.exp(a.ln - best) / total;
    a.pick.forEach((i, c) => {
      weights[c][i] += w;
      mean[c] += w * a.mean[c];
      lnAreas[c].push({ weight: w, mean: a.mean[c], sd: Math.sqrt(a.cov[c][c]), dof: Number.POSITIVE_INFINITY });
      cables.forEach((_, d) => {
        second[c][d] += w * (a.cov[c][d] + a.mean[c] * a.mean[d]);
      });
    });
  }
  return { weights, mean, lnAreas, cov: second.map((row, c) => row.map((v, d) => v - mean[c] * mean[d])) };
}
