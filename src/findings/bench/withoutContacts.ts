import { group } from 'd3-array';
import type { Reading, Trial } from '../../trial/trial.ts';

/** Quantities that say nothing per metre without the distance between the voltage contacts. */
export const OVER_CONTACTS: ReadonlySet<string> = new Set(['resistance']);

/** The note that answers it where nobody knows the distance any more. */
export const contactsUnknown = 'The distance between the voltage contacts is not known.';

/** Counted readings of ohms without the distance that they were read over, piece by piece, but for those it is not known of. */
export function withoutContacts({ readings, notes }: Pick<Trial, 'readings' | 'notes'>): {
  specimen: string;
  readings: Reading[];
}[] {
  const lacking = readings.filter(
    (r) => r.standing === 'counted' && OVER_CONTACTS.has(r.quantity) && r.atLength === null,
  );
  if (lacking.length === 0) return [];
  const answered = new Set(notes.filter((n) => n.text === contactsUnknown).map((n) => n.which));
  const open = lacking.filter((r) => !answered.has(r.reading));
  return [...group(open, (r) => r.specimen)].map(([specimen, own]) => ({ specimen, readings: own }));
}
