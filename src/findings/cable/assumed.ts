import type { JointAssay } from '../../methods/assay/joint.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import { coarseText } from '../rows/trustedStep.ts';

const SHOWN_IN: Readonly<Record<string, { unit: string; scale: number }>> = {
  '1': { unit: '%', scale: 100 },
  K: { unit: '°C', scale: 1 },
  kg: { unit: 'g', scale: 1e3 },
  m: { unit: 'mm', scale: 1e3 },
  ohm: { unit: 'mΩ', scale: 1e3 },
};

function limitText(limit: number, unit: string): string {
  const shown = SHOWN_IN[unit] ?? { unit, scale: 1 };
  return `± ${+(limit * shown.scale).toPrecision(3)} ${shown.unit}`;
}

/** What was typed without its last zeros, and how it was taken. */
function coarseReadings(c: CableReadings): string[] {
  const texts = c.groups.all.flatMap((g) =>
    g.readings.flatMap((r) => [
      coarseText(r.quantity, r.row.value ?? '', r.row.unit ?? '', r.step),
      r.atLength === null
        ? null
        : coarseText('specimen_length', r.row.at_length ?? '', r.row.at_length_unit ?? '', r.atLengthStep),
    ]),
  );
  return [...new Set(texts.filter((t) => t !== null))];
}

/** Limits of error that this cable leans on and that nobody stated, and readings typed without their zeros; in words. */
export function assumedLimits(joint: JointAssay, c: CableReadings): string[] {
  const used = new Set(c.rows.flatMap((r) => [...r.shared.map((s) => s.input), r.temperature?.input ?? '']));
  const limits = joint.inputs
    .filter((i) => i.assumed && used.has(i.input))
    .map((i) => `${i.label}: ${limitText(i.limit, i.unit)}, assumed because nothing was stated.`);
  return [...limits, ...coarseReadings(c)];
}
