import { normalQuantile, studentTQuantile } from '../numerics/distributions.ts';
import { type Component, mixtureInterval, mixtureMean, mixtureSd } from '../numerics/mixture.ts';
import type { Measured } from './schema.ts';

/** What turns a mixture of logarithms into a figure for people. */
export interface FigureOptions {
  /** SI value × scale = value in `unit`. */
  scale: number;
  unit: string;
  level: number;
  from: string[];
  condition?: string;
}

/** A positive figure from the mixture of its logarithm: value e^mean, u = value · sd(ln), interval by quantiles. */
export function measuredFromLn(components: readonly Component[], o: FigureOptions): Measured {
  const value = Math.exp(mixtureMean(components)) * o.scale;
  const [low, high] = mixtureInterval(components, o.level);
  return {
    value,
    unit: o.unit,
    u: value * mixtureSd(components),
    interval: [Math.exp(low) * o.scale, Math.exp(high) * o.scale],
    level: o.level,
    from: o.from,
    ...(o.condition ? { condition: o.condition } : {}),
  };
}

/** A figure known by value and standard uncertainty: Student t for finite degrees of freedom. */
export function measuredFromU(value: number, u: number, o: FigureOptions & { dof?: number }): Measured {
  const p = (1 + o.level) / 2;
  const dof = o.dof ?? Infinity;
  const factor = Number.isFinite(dof) ? studentTQuantile(p, dof) : normalQuantile(p);
  const half = factor * u * o.scale;
  const v = value * o.scale;
  return {
    value: v,
    unit: o.unit,
    u: u * o.scale,
    interval: [v - half, v + half],
    level: o.level,
    from: o.from,
    ...(o.condition ? { condition: o.condition } : {}),
  };
}

/** The figure with its interval cut where nature sets a limit: no wall below nothing, no share above the whole. */
export function withinLimits(m: Measured, least: number, most = Number.POSITIVE_INFINITY): Measured {
  const cut = (x: number) => Math.min(most, Math.max(least, x));
  const interval: Measured['interval'] = [cut(m.interval[0]), cut(m.interval[1])];
  return interval[0] === m.interval[0] && interval[1] === m.interval[1] ? m : { ...m, interval };
}

/** The same figure turned over or rescaled by a monotone function; the ends of the interval change places when it falls. */
export function mapped(m: Measured, unit: string, f: (x: number) => number, slope: (x: number) => number): Measured {
  const [a, b] = [f(m.interval[0]), f(m.interval[1])];
  return { ...m, unit, value: f(m.value), u: Math.abs(slope(m.value)) * m.u, interval: a < b ? [a, b] : [b, a] };
}

/** The ± as it is shown: the larger distance from the value to an end of its interval, so that it never promises too much. */
export function plusMinus({ value, interval }: Pick<Measured, 'value' | 'interval'>): number {
  return Math.max(interval[1] - value, value - interval[0], 0);
}

/** A ± that is a large part of its value: both ends tell more then, and a ± would reach through zero. */
export function isWide(m: Pick<Measured, 'value' | 'interval'>): boolean {
  return plusMinus(m) > WIDE * Math.abs(m.value);
}

const WIDE = 0.3;
