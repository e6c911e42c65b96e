import { seedFromHash } from '../journal/textHash.ts';
import type { OutcomeLevels } from '../methods/assay/conformity.ts';
import { type JointAssay, jointAssay } from '../methods/assay/joint.ts';
import { contentHash } from '../trial/content.ts';
import type { Trial } from '../trial/trial.ts';
import { cableFindings } from './cable/cableFindings.ts';
import { type CurrentFound, currentOf } from './current/current.ts';
import { type FlexFound, flexOf } from './flex/flex.ts';
import { type JacketFound, jacketOf } from './jacket/jacket.ts';
import { shownNames } from './names.ts';
import { rowsOfTrial, type TrialRows } from './rows/rowsOfTrial.ts';
import type { CableFindings } from './schema.ts';

/** What the readings of a trial say of its cables by themselves and of how they bend: the quicker half of the ground. */
export interface AssayGround {
  rows: TrialRows;
  joint: JointAssay;
  /** In the order of the trial. */
  cables: CableFindings[];
  bending: FlexFound;
}

/** What the readings of a trial say in closed form, part by part: the ground of the findings and of a standing. */
export interface Ground extends AssayGround {
  /** Hash of what the trial says, and the seed of its draws, which follows from it. */
  content: string;
  seed: string;
  jackets: JacketFound;
  currents: CurrentFound;
}

/** Reads a trial for its cables and their bending alone: for whoever asks neither for jackets nor for current. */
export function assayGroundOf(trial: Trial, level: number, levels: OutcomeLevels): AssayGround {
  const rows = rowsOfTrial(trial);
  const joint = jointAssay(
    rows.cables.filter((c) => c.rows.length > 0).map((c) => c.assay),
    rows.inputs,
  );
  const assayOf = new Map(joint.cables.map((a) => [a.cable.cable, a]));
  const context = { joint, level, levels, fittings: trial.fittings, names: shownNames(trial.cables) };
  const cables = rows.cables.map((c) => cableFindings(c, assayOf.get(c.cable.cable) ?? null, context));
  return { rows, joint, cables, bending: flexOf(trial, rows, cables, { level }) };
}

/** Reads a trial once: the slow half of everything that is said of it. */
export function groundOf(trial: Trial, level: number, levels: OutcomeLevels): Ground {
  const content = contentHash(trial);
  const seed = seedFromHash(content);
  const assay = assayGroundOf(trial, level, levels);
  const { rows, cables } = assay;
  return {
    ...assay,
    content,
    seed,
    jackets: jacketOf(trial, rows, cables, { level, seed }),
    currents: currentOf(trial, rows, cables, { level }),
  };
}
