import { doubt } from '../rows/cableGroups.ts';
import { SPECIMEN_VARIATION } from '../rows/massRows.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { CableFindings } from '../schema.ts';

const PARTS = ['conductor_mass', 'jacket_mass', 'separator_mass', 'strands_lost', 'residue'] as const;
const grams = (kg: number) => kg * 1000;
const g2 = (kg: number) => grams(kg).toFixed(2);

/**
 * The sum must close: whole specimen = conductor + jacket + separator + what fell out. One line per specimen that was weighed
 * whole and apart. A gap beyond the scale's limits says that something was lost in stripping, or not weighed.
 *
 * `residue` sticks to the weighed conductor and `strands_lost` are missing from it: the first is inside, the second is added.
 */
export function massesOf(c: CableReadings): CableFindings['masses'] {
  return c.specimens.flatMap((s) => {
    const whole = c.groups.on(s.specimen, 'specimen_mass');
    const conductor = c.groups.on(s.specimen, 'conductor_mass');
    const jacket = c.groups.on(s.specimen, 'jacket_mass');
    if (!whole || !conductor || !jacket) return [];
    const parts = PARTS.flatMap((q) => (q === 'residue' ? [] : (c.groups.on(s.specimen, q) ?? [])));
    const sum = parts.reduce((total, p) => total + p.mean, 0);
    const gap = whole.mean - sum;
    // Zero errors of one scale pull the same way in every part, so the limits are added, not squared.
    const limit =
      [whole, ...parts].reduce((total, p) => total + doubt(p) + p.step / 2, 0) + SPECIMEN_VARIATION * 0.1 * whole.mean;
    const closes = Math.abs(gap) <= limit;
    const words = closes
      ? `${s.code || s.specimen}: the parts weigh ${g2(sum)} g, the whole ${g2(whole.mean)} g. The sum closes.`
      : gap > 0
        ? `${s.code || s.specimen}: ${g2(gap)} g are missing from the parts (${g2(sum)} g of ${g2(whole.mean)} g): strands lost in stripping, or something not weighed.`
        : `${s.code || s.specimen}: the parts weigh ${g2(-gap)} g more than the whole (${g2(sum)} g against ${g2(whole.mean)} g): weigh them again.`;
    return [
      {
        specimen: s.specimen,
        whole_g: grams(whole.mean),
        parts_g: grams(sum),
        gap_g: grams(gap),
        limit_g: grams(limit),
        closes,
        text: words,
      },
    ];
  });
}
