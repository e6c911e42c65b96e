import type { Findings, Measured } from '../../../../findings/schema.ts';

/** Two cables side by side. */
export interface Pair {
  /** Area of the first less area of the second. */
  difference: Measured;
  /** The same without its sign, to be said as 'more' or 'less'. */
  size: Measured;
  /** True when the interval leaves out nought. */
  parted: boolean;
  /** Why the difference is sharper than the two single figures. */
  sharper: string;
}

/** The comparison of cable `a` with cable `b`, whichever way round the findings hold it; null when they hold none. */
export function between(findings: Findings, a: string, b: string): Pair | null {
  const found = findings.comparisons.find((pair) => (pair.a === a && pair.b === b) || (pair.a === b && pair.b === a));
  if (found === undefined) return null;
  const difference = found.a === a ? found.difference : negated(found.difference);
  const [low, high] = difference.interval;
  const gain = 1 - found.difference.u / found.u_if_independent;
  return {
    difference,
    size: difference.value < 0 ? negated(difference) : difference,
    parted: low > 0 || high < 0,
    sharper:
      gain > 0.01
        ? `Both were measured with the same tools, so the tools’ own errors cancel in part: the ± is ${Math.round(100 * gain)} % smaller than if each cable had its own.`
        : 'The two share little in their errors, so the difference is no sharper than the single figures.',
  };
}

function negated(figure: Measured): Measured {
  return { ...figure, value: -figure.value, interval: [-figure.interval[1], -figure.interval[0]] };
}
