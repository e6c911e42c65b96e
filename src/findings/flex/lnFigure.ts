import { normalQuantile, studentTQuantile } from '../../numerics/distributions.ts';
import type { Measured } from '../schema.ts';

/** The logarithm of a positive figure with its doubts kept apart, so that what two figures share can cancel. */
export interface LnFigure {
  ln: number;
  /** Standard deviation that each common error (a tool's limit) brings, with its sign: +1 % and −1 % of one rule cancel. */
  shared: ReadonlyMap<string, number>;
  /** Variance of its own, and its degrees of freedom. */
  own: number;
  dof: number;
  from: readonly string[];
}

/** Σ share · figure. Common errors add with their signs, own variances with the squares of the shares. */
export function weighted(parts: readonly { figure: LnFigure; share: number }[]): LnFigure {
  const shared = new Map<string, number>();
  for (const { figure, share } of parts)
    for (const [input, sd] of figure.shared) shared.set(input, (shared.get(input) ?? 0) + share * sd);
  const own = parts.reduce((sum, { figure, share }) => sum + share * share * figure.own, 0);
  return {
    ln: parts.reduce((sum, { figure, share }) => sum + share * figure.ln, 0),
    shared,
    own,
    dof: effectiveDof(parts.map(({ figure, share }) => ({ variance: share * share * figure.own, dof: figure.dof }))),
    from: [...new Set(parts.flatMap(({ figure }) => figure.from))],
  };
}

/** Degrees of freedom of a sum of variances (Welch–Satterthwaite; GUM G.4.1); Infinity where nothing is estimated. */
export function effectiveDof(parts: readonly { variance: number; dof: number }[]): number {
  const total = parts.reduce((sum, p) => sum + p.variance, 0);
  const below = parts.reduce((sum, p) => sum + p.variance ** 2 / p.dof, 0);
  return below > 0 ? total ** 2 / below : Number.POSITIVE_INFINITY;
}

/** Standard deviation of the logarithm, all doubts together. */
export function sdOf({ shared, own }: LnFigure): number {
  let variance = own;
  for (const sd of shared.values()) variance += sd * sd;
  return Math.sqrt(variance);
}

/** Repeats of one figure brought together: the mean, its own variance no less than what the scatter among them says. */
export function together(figures: readonly LnFigure[]): LnFigure {
  const n = figures.length;
  const mean = weighted(figures.map((figure) => ({ figure, share: 1 / n })));
  if (n < 2) return mean;
  const scatter = figures.reduce((sum, f) => sum + (f.ln - mean.ln) ** 2, 0) / (n - 1) / n;
  if (scatter <= mean.own) return mean;
  // Few repeats: the scatter among them leans on four degrees of freedom of what each says of itself (see numerics/typeA.ts).
  const PRIOR_DOF = 4;
  const own = (PRIOR_DOF * mean.own + (n - 1) * scatter) / (PRIOR_DOF + n - 1);
  return { ...mean, own: Math.max(own, mean.own), dof: PRIOR_DOF + n - 1 };
}

/** As a figure for people: e^ln, u = value · sd, the interval even on the scale of ratios. */
export function measuredOfLn(figure: LnFigure, unit: string, level: number, scale = 1, condition?: string): Measured {
  const sd = sdOf(figure);
  const dof = effectiveDof([
    { variance: figure.own, dof: figure.dof },
    { variance: sd * sd - figure.own, dof: Number.POSITIVE_INFINITY },
  ]);
  const p = (1 + level) / 2;
  const factor = Number.isFinite(dof) ? studentTQuantile(p, dof) : normalQuantile(p);
  const value = Math.exp(figure.ln) * scale;
  return {
    value,
    unit,
    u: value * sd,
    interval: [value * Math.exp(-factor * sd), value * Math.exp(factor * sd)],
    level,
    from: [...figure.from],
    ...(condition ? { condition } : {}),
  };
}
