/** The twelve-cable trial that is timed, and the assay's model of it as plain numbers for a second implementation. */
import { rowsOfTrial } from '../src/findings/rows/rowsOfTrial.ts';
import { lnFigure } from '../src/methods/assay/figures.ts';
import { commonInputs } from '../src/methods/assay/hypothesis.ts';
import { jointAssay } from '../src/methods/assay/joint.ts';
import { monteCarloAssay } from '../src/methods/assay/monteCarlo.ts';
import { COMMON, FAULT_ODDS, FAULT_SIZE, LN_AREA, LN_LAY } from '../src/methods/assay/prior.ts';
import { COEFFICIENTS, FAULTS, faultOf } from '../src/methods/assay/row.ts';
import { metalHypotheses } from '../src/methods/metal/hypotheses.ts';
import { mixtureInterval, mixtureMean, mixtureSd } from '../src/numerics/mixture.ts';
import { fold } from '../src/trial/fold.ts';
import { drawLot } from '../test/simulate/lot.ts';
import { entriesOf } from '../test/simulate/tables.ts';

export const LEVEL = 0.95;
const CABLES = 12;
const SEED = 1207;
const DRAW_SEED = '0123456789abcdef';
/** Two pieces weighed, ohms, strands and a look at a scraped strand: all that a tester would take. */
const TWO_PIECES = { name: 'plain', of: 'bench', pieceLength: 300 } as const;

/** One cable's answer in mm². */
export interface AreaAnswer {
  value: number;
  u: number;
  interval: readonly [number, number];
}

/** The readings of the trial, ready for the assay. */
export function assayCase() {
  const { name, tables } = drawLot({ seed: SEED, bench: 'A', cables: CABLES, complication: TWO_PIECES });
  const { cables, inputs } = rowsOfTrial(fold(entriesOf(name, tables)));
  return { cables: cables.map((each) => each.assay), inputs };
}

export type AssayCase = ReturnType<typeof assayCase>;

/** Closed form with its figures: what the page waits for. */
export function closedForm({ cables, inputs }: AssayCase): AreaAnswer[] {
  return jointAssay(cables, inputs).cables.map((each) => {
    const ln = lnFigure(each, 'area');
    const [low, high] = mixtureInterval(ln, LEVEL);
    const value = Math.exp(mixtureMean(ln)) * 1e6;
    return { value, u: value * mixtureSd(ln), interval: [Math.exp(low) * 1e6, Math.exp(high) * 1e6] };
  });
}

/** Closed form, and then the draws. */
export function byDraws({ cables, inputs }: AssayCase, draws: number): AreaAnswer[] {
  const copperRequired = cables.map(() => null);
  const drawn = monteCarloAssay(jointAssay(cables, inputs), { seed: DRAW_SEED, level: LEVEL, draws, copperRequired });
  return drawn.cables.map(({ mean, u, interval }) => ({
    value: mean * 1e6,
    u: u * 1e6,
    interval: [interval[0] * 1e6, interval[1] * 1e6],
  }));
}

/** Everything that the model rests on, as numbers: rows, tools, metals and odds. No result of the assay is in it. */
export function modelAsNumbers({ cables, inputs }: AssayCase) {
  const all = [...inputs, ...commonInputs()];
  const place = new Map(all.map((input, at) => [input.input, at]));
  return {
    level: LEVEL,
    inputs: all.map(({ input, sd, shape }) => ({ input, sd, uniform: shape === 'uniform' })),
    common: Object.keys(COMMON).map((name) => place.get(name)),
    commonSd: Object.values(COMMON),
    lnArea: LN_AREA,
    lnLay: LN_LAY,
    metals: metalHypotheses(),
    faults: FAULTS.map((fault) => ({ odds: FAULT_ODDS[fault], ...FAULT_SIZE[fault] })),
    soundOdds: FAULT_ODDS.none,
    cables: cables.map((cable) => ({
      sight: metalHypotheses().map((metal) => cable.sight[metal.metal] ?? 0),
      rows: cable.rows.map((row) => {
        const fault = faultOf(row.kind);
        return {
          y: row.y,
          g: COEFFICIENTS[row.kind],
          fault: fault === null ? -1 : FAULTS.indexOf(fault),
          shared: row.shared.map(({ input, slope, power }) => ({ at: place.get(input), slope, power })),
          own: row.own.map(({ input, slope, variance, dof }) => ({
            input,
            slope,
            variance,
            dof: Number.isFinite(dof) ? dof : null,
          })),
          temperature: row.temperature && {
            above20: row.temperature.above20,
            at: place.get(row.temperature.input) ?? null,
          },
        };
      }),
    })),
  };
}
