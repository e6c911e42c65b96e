import { group } from 'd3-array';
import type { AssayCable, SharedInput } from '../../methods/assay/row.ts';
import { lnLikelihoodOfSight } from '../../methods/metal/eye.ts';
import type { Cable, Specimen, Trial } from '../../trial/trial.ts';
import { type SpecimenDisagreement, widenWhereSpecimensDisagree } from './birge.ts';
import { CableGroups } from './cableGroups.ts';
import { groupsOf } from './groups.ts';
import { type MeasuredRow, massRow } from './massRows.ts';
import { otherRows } from './otherRows.ts';
import { resistanceRows, type Unusable } from './resistanceRows.ts';
import { type StrandCount, strandCount } from './strandCount.ts';
import { strandRows } from './strandRows.ts';
import { ToolBox } from './tools.ts';

/** One cable of the trial with everything that its readings say, ready for the assay and for words about it. */
export interface CableReadings {
  cable: Cable;
  specimens: Specimen[];
  groups: CableGroups;
  rows: MeasuredRow[];
  count: StrandCount | null;
  disagreement: SpecimenDisagreement | null;
  unusable: Unusable[];
  assay: AssayCable;
}

export interface TrialRows {
  cables: CableReadings[];
  tools: ToolBox;
  inputs: SharedInput[];
}

function readCable(
  cable: Cable,
  specimens: Specimen[],
  groups: CableGroups,
  trial: Trial,
  tools: ToolBox,
): CableReadings {
  const masses = specimens.flatMap((s) => massRow(s, groups, tools) ?? []);
  const resistances = specimens.flatMap((s) => resistanceRows(s, groups, trial, tools));
  const usable = resistances.filter((r): r is MeasuredRow => 'y' in r);
  const unusable = resistances.filter((r): r is Unusable => !('y' in r));
  const count = strandCount(groups);
  const all = [...masses, ...usable, ...strandRows(count, groups, tools), ...otherRows(groups, tools)];
  const { rows, disagreement } = widenWhereSpecimensDisagree(all);
  const evidence = trial.evidence.filter((e) => e.cable === cable.cable);
  return {
    cable,
    specimens,
    groups,
    rows,
    count,
    disagreement,
    unusable,
    assay: { cable: cable.cable, rows, sight: lnLikelihoodOfSight(evidence), control: cable.role === 'control' },
  };
}

/** Turns a trial's readings into rows of the assay, cable by cable, with the instruments that they share. */
export function rowsOfTrial(trial: Trial): TrialRows {
  const tools = new ToolBox(trial);
  const groups = group(groupsOf(trial, tools), (g) => g.cable);
  const specimens = group(trial.specimens, (s) => s.cable);
  const cables = trial.cables.map((cable) =>
    readCable(cable, specimens.get(cable.cable) ?? [], new CableGroups(groups.get(cable.cable) ?? []), trial, tools),
  );
  return { cables, tools, inputs: tools.sharedInputs() };
}
