import { SeededDraws } from '../../../numerics/random.ts';
import type { DrawPlan } from '../../assay/drawPlan.ts';
import { areaDraws, type DrawnBlock } from '../../assay/draws.ts';
import { drawAbilities, type KnownAbilities } from '../../flex/pairs/chances.ts';
import type { DrawnValues } from './places.ts';
import { unknownWorth, type ValueFunction, worthOf } from './valueFunction.ts';

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
  /** Somewhere between two ends, each place as likely. */
  | { from: 'between'; low: number; high: number }
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
  /** True where a scale may be changed later without drawing again (see `rescaled.ts`): it holds every figure in memory. */
  keepRaw?: boolean;
  /** Called after each block; a return of true stops. */
  onBlock?: (draws: number) => boolean;
}

export interface DrawnStanding extends DrawnValues {
  /** The figures themselves, in their units, of the first draws: criterion by criterion, draw after draw one number for each cable; NaN where unknown. */
  figures: readonly Float64Array[];
  /**
   * Of all draws, where they were asked for: the figure before it was put on its scale; where it is unknown, the number from 0 to 1
   * that was drawn in its stead.
   */
  raw: readonly Float64Array[] | null;
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
  const ease = o.abilities ? drawAbilities(o.abilities, o.draws, root.stream(2)) : null;
  const { count, draws } = o;
  const values = o.criteria.map(() => new Float32Array(draws * count));
  const raw = o.keepRaw ? o.criteria.map(() => new Float64Array(draws * count)) : null;
  const kept = Math.min(FIGURES_KEPT, draws);
  const figures = o.criteria.map(() => new Float64Array(kept * count));
  const x = new Float64Array(BLOCK);
  let done = 0;
  while (done < draws) {
    const size = Math.min(BLOCK, draws - done);
    const block: OneBlock = {
      size,
      start: done,
      assay: nextAssay?.(size) ?? null,
      errors: new Map(inputs.map((input) => [input, uniformErrors(size, random)])),
      random,
      ease,
      things,
    };
    o.criteria.forEach(({ scale, sources }, k) => {
      for (let i = 0; i < count; i++) {
        const unknown = sources[i].from === 'unknown';
        if (unknown) for (let j = 0; j < size; j++) x[j] = random.uniform();
        else fillFigure(sources[i], block, x);
        if (raw) for (let j = 0, at = done * count + i; j < size; j++, at += count) raw[k][at] = x[j];
        for (let j = 0; j < size && done + j < kept; j++)
          figures[k][(done + j) * count + i] = unknown ? Number.NaN : x[j];
        for (let j = 0; j < size; j++) x[j] = unknown ? unknownWorth(scale, x[j]) : worthOf(scale, x[j]);
        for (let j = 0, at = done * count + i; j < size; j++, at += count) values[k][at] = x[j];
      }
    });
    done += size;
    if (o.onBlock?.(done)) break;
  }
  const drawn = <T extends Float32Array | Float64Array>(of: T): T => of.subarray(0, done * count) as T;
  return { count, draws: done, values: values.map(drawn), figures, raw: raw?.map(drawn) ?? null };
}

interface OneBlock {
  size: number;
  /** Number of its first draw. */
  start: number;
  assay: DrawnBlock | null;
  errors: ReadonlyMap<string, Float64Array>;
  random: SeededDraws;
  ease: Float64Array | null;
  /** Judged things in each row of `ease`. */
  things: number;
}

function sharedInputs(criteria: readonly ScaledCriterion[]): string[] {
  const named = criteria.flatMap(({ sources }) =>
    sources.flatMap((s) => (s.from === 'figure' ? [...s.figure.shared.keys()] : [])),
  );
  return [...new Set(named)].sort();
}

/** Errors within a limit, in standard deviations. */
function uniformErrors(size: number, random: SeededDraws): Float64Array {
  return Float64Array.from({ length: size }, () => ROOT_TWELVE * (random.uniform() - 0.5));
}

function fillFigure(source: Source, block: OneBlock, into: Float64Array): void {
  const { size, start, assay, ease, things } = block;
  if (source.from === 'known') into.fill(source.value, 0, size);
  else if (source.from === 'ability')
    for (let j = 0; j < size; j++) into[j] = ease![(start + j) * things + source.thing];
  else if (source.from === 'assay') fillAssay(assay!, source.cable, source.figure, source.scale, size, into);
  else if (source.from === 'between')
    for (let j = 0; j < size; j++) into[j] = source.low + (source.high - source.low) * block.random.uniform();
  else if (source.from === 'figure') fillDoubtful(source.figure, block, into);
}

function fillAssay(
  assay: DrawnBlock,
  cable: number,
  figure: 'area' | 'copper' | number,
  scale: number,
  size: number,
  into: Float64Array,
): void {
  const ln = typeof figure === 'number' ? assay.further[figure][cable] : assay.lnArea[cable];
  for (let j = 0; j < size; j++) into[j] = scale * Math.exp(ln[j]);
  if (figure !== 'copper') return;
  const share = assay.copperShare[cable];
  for (let j = 0; j < size; j++) into[j] *= share[j];
}

function fillDoubtful(figure: DoubtfulFigure, { size, errors, random }: OneBlock, into: Float64Array): void {
  const { ln, centre, own, dof, scale } = figure;
  into.fill(centre, 0, size);
  for (const [input, sd] of figure.shared) {
    const error = errors.get(input)!;
    for (let j = 0; j < size; j++) into[j] += sd * error[j];
  }
  if (own > 0)
    for (let j = 0; j < size; j++)
      into[j] += own * (dof === Number.POSITIVE_INFINITY ? random.normal() : random.studentT(dof));
  for (let j = 0; j < size; j++) into[j] = scale * (ln ? Math.exp(into[j]) : into[j]);
}
