import { choleskyInPlace, solveCholesky } from '../../numerics/dense.ts';
import { chiSquareUpperTail } from '../../numerics/distributions.ts';
import { type System, systemUnder } from './hypothesis.ts';
import type { AssayComponent, CableAssay } from './joint.ts';
import { foretell, type SharedState } from './posterior.ts';
import { type Fault, faultOf, type RowKind } from './row.ts';

/** Do the readings of one cable agree with one another, and if not, which should be taken again? */
export interface Consistency {
  chi2: number;
  dof: number;
  /** Chance of so much disagreement, or more, among readings that are all sound. */
  p: number;
  /** Kind of row to take again; null when they agree. */
  recheck: RowKind | null;
  /** Belief in a gross error in each group of readings. */
  faultBelief: Readonly<Record<Fault, number>>;
  /** How far the row to be taken again stands from what the others foretell, relative: +0.06 is 6 % more. */
  off: number | null;
}

/** Disagreement less likely than this is reported. */
export const DISAGREE_BELOW = 0.01;

/** χ² of the rows that are kept, ln A being free. */
function chiSquare(system: System, state: SharedState, keep: readonly number[]): number {
  const { residual, M } = foretell(system, state);
  const m = keep.length;
  if (m === 0) return 0;
  const block = new Float64Array(m * m);
  const r = new Float64Array(m);
  keep.forEach((i, a) => {
    r[a] = residual[i];
    keep.forEach((j, b) => {
      block[a * m + b] = M[i * system.n + j];
    });
  });
  choleskyInPlace(block, m);
  const solved = Float64Array.from(r);
  solveCholesky(block, m, solved);
  let chi2 = 0;
  for (let a = 0; a < m; a++) chi2 += r[a] * solved[a];
  return chi2;
}

function beliefInFaults(assay: CableAssay): Record<Fault, number> {
  const belief = { mass: 0, resistance: 0, strands: 0 };
  for (const c of assay.components) if (c.supposition.fault) belief[c.supposition.fault] += c.weight;
  return belief;
}

/** The kind of reading whose removal restores the most agreement. */
function worstKind(assay: CableAssay, component: AssayComponent): RowKind | null {
  const { rows } = assay.cable;
  const kinds = [...new Set(rows.map((row) => row.kind))];
  if (kinds.length < 2) return rows.length > 1 ? rows[0].kind : null;
  let best: RowKind | null = null;
  let least = Infinity;
  for (const kind of kinds) {
    const keep = rows.flatMap((row, i) => (row.kind === kind ? [] : [i]));
    if (keep.length === 0) continue;
    const left = chiSquare(component.system, assay.others, keep);
    if (left < least) {
      least = left;
      best = kind;
    }
  }
  return best;
}

/**
 * What rows of one kind say on average, less what the rows of all other kinds foretell of them, in logs; null when there are
 * no others. Rows that one gross error would spoil together are left out together, or they would vouch for each other.
 */
function distanceOf(kind: RowKind, assay: CableAssay, system: System): number | null {
  const { rows } = assay.cable;
  const together = (row: (typeof rows)[number]) =>
    row.kind === kind || (faultOf(kind) !== null && faultOf(row.kind) === faultOf(kind));
  const rest = rows.flatMap((row, i) => (together(row) ? [] : [i]));
  const own = rows.flatMap((row, i) => (row.kind === kind ? [i] : []));
  if (rest.length === 0) return null;
  const { residual, M } = foretell(system, assay.others);
  const block = Float64Array.from(rest.flatMap((i) => rest.map((j) => M[i * system.n + j])));
  const solved = Float64Array.from(rest, (i) => residual[i]);
  choleskyInPlace(block, rest.length);
  solveCholesky(block, rest.length, solved);
  const apart = own.map((i) => residual[i] - rest.reduce((sum, j, b) => sum + M[i * system.n + j] * solved[b], 0));
  return apart.reduce((a, b) => a + b, 0) / apart.length;
}

/** The equations of the metal that goes with a likely fault, the fault left out: what a reading is held against. */
function soundSystemFor(fault: Fault, assay: CableAssay): System | null {
  const faulty = assay.components.filter((c) => c.supposition.fault === fault);
  const top = faulty.reduce<AssayComponent | null>((a, b) => (a === null || b.weight > a.weight ? b : a), null);
  return top && systemUnder(assay.frame, { ...top.supposition, fault: null });
}

/**
 * Agreement of redundant readings: χ² of the residuals under the most believed named metal, the area being free, on
 * (rows − 1) degrees of freedom. A reading is named for a second look when p < 0.01, or when a gross error in its group is
 * more likely than not.
 *
 * Not to be trusted to find what shifts every reading alike: paper weighed with the metal, heavy tin, a cut 1 mm off.
 *
 * @returns null when there are fewer than two rows, or when only "other" is believed.
 */
export function consistency(assay: CableAssay): Consistency | null {
  const { rows } = assay.cable;
  const component = assay.sound;
  if (rows.length < 2 || !component) return null;
  const chi2 = chiSquare(
    component.system,
    assay.others,
    rows.map((_, i) => i),
  );
  const dof = rows.length - 1;
  const p = chiSquareUpperTail(Math.max(chi2, 0), dof);
  const faultBelief = beliefInFaults(assay);
  const likely = (Object.keys(faultBelief) as Fault[]).find((f) => faultBelief[f] > 0.5);
  let recheck: RowKind | null = null;
  if (likely) recheck = rows.find((row) => faultOf(row.kind) === likely)?.kind ?? null;
  else if (p < DISAGREE_BELOW) recheck = worstKind(assay, component);
  const against = (likely && soundSystemFor(likely, assay)) ?? component.system;
  const off = recheck ? distanceOf(recheck, assay, against) : null;
  return { chi2, dof, p, recheck, faultBelief, off: off === null ? null : Math.expm1(off) };
}

/**
 * For each row, its distance from what the other rows and the metal's constants foretell, in standard deviations of that
 * distance; null where a single row leaves nothing to foretell it by.
 */
export function standardisedResiduals(assay: CableAssay): (number | null)[] {
  const { rows } = assay.cable;
  const component = assay.sound;
  if (!component || rows.length < 2) return rows.map(() => null);
  const { weighted, precision } = component.answer;
  return rows.map((_, i) => {
    // A row that nothing else foretells has the flat prior of ln A in its variance: its distance means nothing.
    const sd = 1 / Math.sqrt(precision[i]);
    return sd > 0.7 ? null : weighted[i] / precision[i] / sd;
  });
}
