import { remarksOnLabels } from './remarksOnLabels.ts';
import { remarksOnReferences } from './remarksOnReferences.ts';
import { remarksOnRetags } from './remarksOnRetags.ts';
import { remarksOnTemperatures } from './remarksOnTemperatures.ts';
import { remarksOnTools } from './remarksOnTools.ts';
import { remarksOnValues } from './remarksOnValues.ts';
import type { Remark, Trial } from './trial.ts';

/**
 * Everything unlikely about a trial: kept, counted, and said. Impossible things never get here; they are refused at the
 * door (`journal/rowCheck.ts`).
 */
export function remarksOn(trial: Trial): Remark[] {
  const values = remarksOnValues(trial);
  const said = new Set(values.flatMap(({ readings }) => readings));
  return [
    ...remarksOnReferences(trial),
    ...remarksOnRetags(trial),
    ...remarksOnTools(trial),
    ...values,
    ...remarksOnLabels(trial).filter(({ readings }) => !readings.every((reading) => said.has(reading))),
    ...remarksOnTemperatures(trial),
  ];
}
