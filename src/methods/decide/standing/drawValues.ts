import { SeededDraws } from '../../../numerics/random.ts';
import type { DrawPlan } from '../../assay/drawPlan.ts';
import { areaDraws, type DrawnBlock } from '../../assay/draws.ts';
import { drawAbilities, type KnownAbilities } from '../../flex/pairs/chances.ts';
import type { DrawnValues } from './places.ts';
import { type ValueFunction, worthOf } from './valueFunction.ts';

/** A figure that its mean and its doubts describe; errors of one tool are common to every figure that names it. */
export interface DoubtfulFigure {
  /** True when `centre`, `shared` and `own` are of the figure's logarithm. */
  ln: boolean;
  centre: number;
  /** Standard deviation that each common error brings, with its sign. Limits of error are uniform. */
  shared: ReadonlyMap<string, number>;
  /** Standard deviation of its own, and its degrees of freedom. */
  own: number;
  dof: number;
  /** Figure × scale stands in the criterion's unit. */
  scale: number;
}

/** Where one cable's figure of one criterion comes from in each draw. */
export type Source =
  /** Of the joint assay: the metal area, its copper (area × copper's share), or the further figure of that number in the plan. */
  | { from: 'assay'; cable: number; figure: 'area' | 'copper' | number; scale: number }
  | { from: 'figure'; figure: DoubtfulFigure }
  /** The ease of bending of that number among the judged. */
  | { from: 'ability'; thing: number }
  | { from: 'known'; value: number }
  /** Nothing was measured: anything on the scale. */
  | { from: 'unknown' };

export interface ScaledCriterion {
  scale: ValueFunction;
  /** One for each cable in the order. */
  sources: readonly Source[];
}

export interface ValueDrawOptions {
  criteria: readonly ScaledCriterion[];
  /** Cables in the order. */
  count: number;
  assay: DrawPlan | null;
  abilities: KnownAbilities | null;
  /** Bytes, 8 or more. */
  seed: Uint8Array;
  draws: number;
  /** Called after each block; a return of true stops. */
  onBlock?: (draws: number) => boolean;
}

export interface DrawnStanding extends DrawnValues {
  /** The figures themselves, in their units, of the first draws: criterion by criterion, draw after draw one number for each cable; NaN where unknown. */
  figures: readonly Float64Array[];
}

const BLOCK = 10_000;
/** As many draws keep their figures beside their worth. */
const FIGURES_KEPT = 2000;
const ROOT_TWELVE = Math.sqrt(12);

/**
 * What every criterion is worth for every cable in joint draws: one draw of the tools' errors, the metals, the lay, the judged ease
 * and everything else for all cables together, so that what cables have in common parts none of them.
 *
 * The same seed gives the same digits; each kind of figure draws from a stream of its own.
 */
export function drawValues(o: ValueDrawOptions): DrawnStanding {
  const root = new SeededDraws(o.seed);
  const nextAssay = o.assay && o.assay.cables.length > 0 ? areaDraws(o.assay, root.copy()) : null;
  const random = root.stream(1);
  const inputs = sharedInputs(o.criteria);
  const things = o.abilities?.abilities.length ?? 0;
  const easeOf = o.abilities ? drawAbilities(o.abilities, o.draws, root.stream(2)) : null;
  const { count, draws } = o;
  const values = o.criteria.map(() => new Float32Array(draws * count));
  const kept = Math.min(FIGURES_KEPT, draws);
  const figures = o.criteria.map(() => new Float64Array(kept * count));
  const errors = new Float64Array(inputs.length);
  const readers = o.criteria.map(({ sources }) => sources.map((s) => readerOf(s, inputs)));
  let done = 0;
  while (done < draws) {
    const size = Math.min(BLOCK, draws - done);
    const block = nextAssay?.(size) ?? null;
    for (let j = 0; j < size; j++) {
      const d = done + j;
      for (let q = 0; q < errors.length; q++) errors[q] = ROOT_TWELVE * (random.uniform() - 0.5);
      const draw: OneDraw = { block, j, errors, random, easeOf, easeAt: d * things };
      for (let k = 0; k < values.length; k++)
        for (let i = 0; i < count; i++) {
          const x = readers[k][i](draw);
          const { scale } = o.criteria[k];
          values[k][d * count + i] = Number.isNaN(x) ? anyWorth(scale, random.uniform()) : worthOf(scale, x);
          if (d < kept) figures[k][d * count + i] = x;
        }
    }
    done += size;
    if (o.onBlock?.(done)) break;
  }
  return done === draws
    ? { count, draws, values, figures }
    : { count, draws: done, values: values.map((v) => v.subarray(0, done * count)), figures };
}

interface OneDraw {
  block: DrawnBlock | null;
  j: number;
  errors: Float64Array;
  random: SeededDraws;
  easeOf: Float64Array | null;
  easeAt: number;
}

/** What an unknown figure may be worth: anything between the two ends; reached or not, as likely, for a threshold. */
function anyWorth({ shape }: ValueFunction, u: number): number {
  return shape === 'threshold' ? Math.round(u) : u;
}

function sharedInputs(criteria: readonly ScaledCriterion[]): string[] {
  const named = criteria.flatMap(({ sources }) =>
    sources.flatMap((s) => (s.from === 'figure' ? [...s.figure.shared.keys()] : [])),
  );
  return [...new Set(named)].sort();
}

/** A function that gives the figure of one draw, NaN for unknown; made once, so that the loop of draws asks no questions. */
function readerOf(source: Source, inputs: readonly string[]): (draw: OneDraw) => number {
  switch (source.from) {
    case 'known':
      return () => source.value;
    case 'unknown':
      return () => Number.NaN;
    case 'ability':
      return ({ easeOf, easeAt }) => easeOf![easeAt + source.thing];
    case 'assay':
      return assayReader(source.cable, source.figure, source.scale);
    case 'figure':
      return figureReader(source.figure, inputs);
  }
}

function assayReader(cable: number, figure: 'area' | 'copper' | number, scale: number): (draw: OneDraw) => number {
  if (figure === 'area') return ({ block, j }) => scale * Math.exp(block!.lnArea[cable][j]);
  if (figure === 'copper')
    return ({ block, j }) => scale * Math.exp(block!.lnArea[cable][j]) * block!.copperShare[cable][j];
  return ({ block, j }) => scale * Math.exp(block!.further[figure][cable][j]);
}

function figureReader(figure: DoubtfulFigure, inputs: readonly string[]): (draw: OneDraw) => number {
  const { ln, centre, own, dof, scale } = figure;
  const at = Int32Array.from(figure.shared.keys(), (input) => inputs.indexOf(input));
  const sd = Float64Array.from(figure.shared.values());
  return ({ errors, random }) => {
    let x = centre;
    for (let q = 0; q < at.length; q++) x += sd[q] * errors[at[q]];
    if (own > 0) x += own * (dof === Infinity ? random.normal() : random.studentT(dof));
    return scale * (ln ? Math.exp(x) : x);
  };
}
