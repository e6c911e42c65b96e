import type { Specimen } from '../../trial/trial.ts';
import { GRAVITY } from '../../units/exactFactors.ts';
import type { CableGroups } from '../rows/cableGroups.ts';
import type { Group } from '../rows/groups.ts';
import { CUT_TO_LENGTH } from '../rows/massRows.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import { GRAVITY_HALF_WIDTH } from './bendReadings.ts';
import { type LnFigure, together } from './lnFigure.ts';

/** Weight per length, ln(N/m), and what it holds under. */
export interface WeightFound {
  figure: LnFigure;
  condition: string | undefined;
}

const ROOT_THREE = Math.sqrt(3);
/** How far a mass per metre that a label states may be off. Common practice, no source. */
const LABEL_MASS_HALF_WIDTH = 0.05;
/** Pieces of one cable differ by this much in mass per length, relative: as the assay takes it. */
const PIECE_VARIATION = 0.002;

/** Parts that make up a whole piece where it was not weighed whole. */
const PARTS = ['conductor_mass', 'jacket_mass', 'separator_mass', 'strands_lost', 'residue'];

function massParts(specimen: string, groups: CableGroups): Group[] | null {
  const whole = groups.on(specimen, 'specimen_mass');
  if (whole) return [whole];
  const parts = PARTS.flatMap((q) => groups.on(specimen, q) ?? []).filter((g) => g.quantity !== 'residue');
  const has = (q: string) => parts.some((g) => g.quantity === q);
  return has('conductor_mass') && has('jacket_mass') ? parts : null;
}

interface Known {
  value: number;
  shared: [string, number][];
  own: number;
  from: string;
}

function knownOf(group: Group, slope: number): Known {
  const { tool, mean } = group;
  return {
    value: mean,
    shared: [
      [`${tool.id} zero on ${group.quantity}`, (slope * tool.limit.absolute) / ROOT_THREE],
      [`${tool.id} gain on ${group.quantity}`, (slope * mean * tool.limit.fraction) / ROOT_THREE],
    ],
    own: slope * slope * group.scatter.variance,
    from: group.quantity,
  };
}

/** The length of the whole piece: measured, else of its conductor, else as it was cut to. */
function lengthOfPiece(piece: Specimen, groups: CableGroups): Known | null {
  for (const quantity of ['specimen_length', 'conductor_length']) {
    const g = groups.on(piece.specimen, quantity);
    if (g) return knownOf(g, -1 / g.mean);
  }
  if (piece.cutLength === null) return null;
  const half = Math.max(CUT_TO_LENGTH, piece.cutLengthStep / 2) / piece.cutLength;
  return { value: piece.cutLength, shared: [], own: half ** 2 / 3, from: 'cut_length' };
}

function ofPiece(piece: Specimen, groups: CableGroups): LnFigure | null {
  const parts = massParts(piece.specimen, groups);
  const length = parts && lengthOfPiece(piece, groups);
  if (!parts || !length) return null;
  const mass = parts.reduce((sum, g) => sum + g.mean, 0);
  if (!(mass > 0 && length.value > 0)) return null;
  const known = [...parts.map((g) => knownOf(g, 1 / mass)), length];
  const shared = new Map<string, number>([['gravity', GRAVITY_HALF_WIDTH / ROOT_THREE]]);
  for (const [input, sd] of known.flatMap((k) => k.shared))
    if (sd !== 0) shared.set(input, (shared.get(input) ?? 0) + sd);
  return {
    ln: Math.log((mass / length.value) * GRAVITY),
    shared,
    own: known.reduce((sum, k) => sum + k.own, 0) + PIECE_VARIATION ** 2,
    dof: Number.POSITIVE_INFINITY,
    from: known.map((k) => k.from),
  };
}

/**
 * Weight per length of a cable, N/m: from the piece itself where it was weighed, else the mean over the cable's pieces, else
 * from the mass per metre that its label states. null when none of them is known.
 */
export function weightOf(cable: CableReadings, specimen: string): WeightFound | null {
  const self = cable.specimens.find((s) => s.specimen === specimen);
  const own = self ? ofPiece(self, cable.groups) : null;
  if (own) return { figure: own, condition: undefined };
  const others = cable.specimens.flatMap((s) => ofPiece(s, cable.groups) ?? []);
  if (others.length > 0) return { figure: together(others), condition: undefined };
  const typed = cable.cable.label.massPerMetre;
  if (typed === null) return null;
  const figure: LnFigure = {
    ln: Math.log(typed * GRAVITY),
    shared: new Map([['gravity', GRAVITY_HALF_WIDTH / ROOT_THREE]]),
    own: LABEL_MASS_HALF_WIDTH ** 2 / 3,
    dof: Number.POSITIVE_INFINITY,
    from: ['claimed_mass'],
  };
  return { figure, condition: 'if it weighs what its label says' };
}
