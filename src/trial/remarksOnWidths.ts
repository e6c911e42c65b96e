import { median } from '../numerics/describe.ts';
import { typedText } from '../units/typedText.ts';
import { quantityHead, quantityWords } from './plainWords.ts';
import type { Reading, Remark, Trial } from './trial.ts';

/** What lies inside what: the first cannot be wider than the second. */
const INSIDE: readonly { inner: string; outer: string; code: string }[] = [
  { inner: 'strand_diameter', outer: 'conductor_diameter', code: 'strand-wider-than-bundle' },
  { inner: 'conductor_diameter', outer: 'outer_diameter', code: 'bundle-wider-than-jacket' },
  { inner: 'wall_thickness', outer: 'outer_diameter', code: 'wall-wider-than-cable' },
];
/** A solid conductor is one strand: two tools may differ by this share on the same wire. */
const SAME_WIDTH = 1.05;
const NAMES: ReadonlySet<string> = new Set(INSIDE.flatMap(({ inner, outer }) => [inner, outer]));

/** Diameters that cannot both be right, because one lies inside the other: one remark for each cable and pair. */
export function remarksOnWidths(trial: Trial): Remark[] {
  const nameOf = new Map(trial.cables.map(({ cable, name }) => [cable, name]));
  const byCable = new Map<string, Map<string, Reading[]>>();
  for (const reading of trial.readings) {
    if (reading.standing !== 'counted' || !NAMES.has(reading.quantity)) continue;
    let quantities = byCable.get(reading.cable);
    if (!quantities) {
      quantities = new Map();
      byCable.set(reading.cable, quantities);
    }
    const readings = quantities.get(reading.quantity);
    if (readings) readings.push(reading);
    else quantities.set(reading.quantity, [reading]);
  }
  return [...byCable].flatMap(([cable, quantities]) =>
    INSIDE.flatMap(({ inner, outer, code }) => {
      const outside = quantities.get(outer);
      if (!outside) return [];
      const limit = median(outside.map((reading) => reading.value));
      const wider = (quantities.get(inner) ?? []).filter((reading) => reading.value > limit * SAME_WIDTH);
      if (wider.length === 0) return [];
      const found = wider.map(({ row }) => typedText(row.value ?? '', row.unit ?? '')).join(', ');
      const text = `${quantityHead(inner)} of ${nameOf.get(cable) || cable || 'an undescribed cable'} is ${found}, wider than its ${quantityWords(outer)}: check the unit and the decimal point.`;
      return [{ code, cable: cable || null, readings: wider.map((reading) => reading.reading), text }];
    }),
  );
}
