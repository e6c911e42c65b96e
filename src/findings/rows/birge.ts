import { chiSquareUpperTail } from '../../numerics/distributions.ts';
import type { MeasuredRow } from './massRows.ts';

/** Specimens of one cable that weigh differently per metre, beyond what scale and rule explain. */
export interface SpecimenDisagreement {
  chi2: number;
  dof: number;
  p: number;
  /** The specimen furthest from the others when there are three or more; null when two cannot tell which. */
  odd: string | null;
  specimens: string[];
  /** Largest over smallest, less one. */
  spread: number;
}

const DISAGREE_BELOW = 0.01;
const isOwnOfSpecimen = (input: string) => input !== 'unseen on mass';

function ownVariance(row: MeasuredRow): number {
  return row.own.reduce((sum, o) => (isOwnOfSpecimen(o.input) ? sum + o.slope ** 2 * o.variance : sum), 0);
}

/**
 * Widens the mass rows of a cable when its specimens contradict one another: each row's own variance is multiplied by
 * χ²/dof (the Birge ratio squared; R. T. Birge, Phys. Rev. 40, 207, 1932, from memory). Instruments' common errors cancel
 * between specimens and are left out of the test.
 */
export function widenWhereSpecimensDisagree(rows: MeasuredRow[]): {
  rows: MeasuredRow[];
  disagreement: SpecimenDisagreement | null;
} {
  const masses = rows.filter((r) => r.kind === 'mass');
  if (masses.length < 2) return { rows, disagreement: null };
  const weights = masses.map((r) => 1 / ownVariance(r));
  const total = weights.reduce((a, b) => a + b, 0);
  const centre = masses.reduce((sum, r, i) => sum + weights[i] * r.y, 0) / total;
  const chi2 = masses.reduce((sum, r, i) => sum + weights[i] * (r.y - centre) ** 2, 0);
  const dof = masses.length - 1;
  const p = chiSquareUpperTail(chi2, dof);
  if (p >= DISAGREE_BELOW) return { rows, disagreement: null };
  const ratio = chi2 / dof;
  const widened = rows.map((r) =>
    r.kind === 'mass'
      ? { ...r, own: r.own.map((o) => (isOwnOfSpecimen(o.input) ? { ...o, variance: o.variance * ratio } : o)) }
      : r,
  );
  const sorted = [...masses].sort((a, b) => a.y - b.y);
  const middle = sorted[Math.floor(sorted.length / 2)].y;
  const far = [...masses].sort((a, b) => Math.abs(b.y - middle) - Math.abs(a.y - middle))[0];
  return {
    rows: widened,
    disagreement: {
      chi2,
      dof,
      p,
      odd: masses.length > 2 ? far.specimen : null,
      specimens: masses.flatMap((r) => r.specimen ?? []),
      spread: Math.exp(sorted[sorted.length - 1].y - sorted[0].y) - 1,
    },
  };
}
