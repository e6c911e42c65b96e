import type { Component } from '../../numerics/mixture.ts';
import { COPPER_FAMILY, type Metal } from '../metal/hypotheses.ts';
import type { AnsweredCable, AssayComponent, CableAssay, JointAssay } from './joint.ts';
import { cableFigure, type LinearFigure } from './linearFigure.ts';

/** Directions in (ln A, ln k, ln ρm, ln ρe) whose exponential is a figure that people know. */
export const DIRECTIONS = {
  /** metal area, m² */
  area: [1, 0, 0, 0],
  /** lay factor */
  lay: [0, 1, 0, 0],
  /** density, kg/m³ */
  density: [0, 0, 1, 0],
  /** resistance per cable length at 20 °C, Ω/m */
  resistancePerMetre: [-1, 1, 0, 1],
  /** mass per cable length, kg/m */
  massPerMetre: [1, 1, 1, 0],
  /** mass per length times resistance per length, Ω·kg/m²: free of the area (ASTM B193 mass resistivity, lay included) */
  massResistivity: [0, 2, 1, 1],
} as const satisfies Record<string, readonly [number, number, number, number]>;

export type Direction = keyof typeof DIRECTIONS;

/** Effective degrees of freedom of one linear figure under one supposition (Welch–Satterthwaite, JCGM 100 G.4). */
function dofOf({ variance, moves }: LinearFigure, rows: AnsweredCable['cable']['rows']): number {
  const finite = new Map<string, { moved: number; variance: number; dof: number }>();
  rows.forEach((row, i) => {
    for (const own of row.own) {
      if (!Number.isFinite(own.dof)) continue;
      const seen = finite.get(own.input);
      if (seen) seen.moved += moves[i] * own.slope;
      else finite.set(own.input, { moved: moves[i] * own.slope, variance: own.variance, dof: own.dof });
    }
  });
  let fourth = 0;
  for (const f of finite.values()) fourth += (f.moved ** 2 * f.variance) ** 2 / f.dof;
  const dof = fourth > 0 ? variance ** 2 / fourth : Infinity;
  return dof > 200 ? Infinity : Math.max(dof, 1);
}

/** The logarithm of a figure as a mixture over everything that may be so. */
export function lnFigure(assay: AnsweredCable, direction: Direction): readonly Component[] {
  return remembered(assay, direction, () => lnAlong(assay, assay.components, DIRECTIONS[direction]));
}

/** As {@link lnFigure}, on condition that the metal is one of those named. Empty when none of them is left. */
export function lnFigureIf(assay: AnsweredCable, direction: Direction, metals: readonly Metal[]): readonly Component[] {
  return remembered(assay, `${direction} if ${metals.join()}`, () => {
    const kept = assay.components.filter((c) => metals.includes(c.supposition.metal.metal));
    return lnAlong(assay, kept, DIRECTIONS[direction]);
  });
}

/** A cable's answer never changes, and every claim asks for the same few figures: each is worked out once. */
const worked = new WeakMap<AnsweredCable, Map<string, readonly Component[]>>();

function remembered(assay: AnsweredCable, key: string, work: () => Component[]): readonly Component[] {
  let known = worked.get(assay);
  if (!known) {
    known = new Map();
    worked.set(assay, known);
  }
  let figure = known.get(key);
  if (!figure) {
    figure = work();
    known.set(key, figure);
  }
  return figure;
}

function lnAlong(assay: AnsweredCable, components: readonly AssayComponent[], a: readonly number[]): Component[] {
  const sum = components.reduce((total, c) => total + c.weight, 0);
  return components.map((c) => {
    const figure = cableFigure(assay, c, a);
    const { mean, variance } = figure;
    return { weight: c.weight / sum, mean, sd: Math.sqrt(variance), dof: dofOf(figure, assay.cable.rows) };
  });
}

/** The answer on condition that the metal is one of those named, beliefs scaled to sum to 1; null when none of them is left. */
export function onCondition(assay: CableAssay, metals: readonly Metal[]): CableAssay | null {
  const kept = assay.components.filter((c) => metals.includes(c.supposition.metal.metal));
  const sum = kept.reduce((total, c) => total + c.weight, 0);
  return sum > 0 ? { ...assay, components: kept.map((c) => ({ ...c, weight: c.weight / sum })) } : null;
}

/** Belief in each metal. */
export function metalBelief(assay: AnsweredCable): Map<Metal, number> {
  const belief = new Map<Metal, number>();
  for (const c of assay.components)
    belief.set(c.supposition.metal.metal, (belief.get(c.supposition.metal.metal) ?? 0) + c.weight);
  return belief;
}

/** Belief that the metal is copper, bare or tinned. */
export function copperBelief(assay: AnsweredCable): number {
  const belief = metalBelief(assay);
  return COPPER_FAMILY.reduce((sum, m) => sum + (belief.get(m) ?? 0), 0);
}

/** Covariance of the two cables' ln areas that their common instruments make: g_aᵀ Λ⁻¹ g_b. */
export function sharedCovarianceOfAreas(joint: JointAssay, a: CableAssay, b: CableAssay): number {
  const nb = joint.inputs.length;
  let sum = 0;
  for (let i = 0; i < nb; i++)
    if (a.leansOn[i] !== 0)
      for (let j = 0; j < nb; j++) sum += a.leansOn[i] * joint.shared.cov[i * nb + j] * b.leansOn[j];
  return sum;
}
