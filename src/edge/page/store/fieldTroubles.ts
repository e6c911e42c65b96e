import type { SixFields } from '../../../findings/quick.ts';
import type { Dimension } from '../../../units/dimension.ts';
import { readSizeText } from '../../../units/sizeText.ts';
import { readTypedQuantity } from '../../../units/typedQuantity.ts';

/** What was found in a field and what was expected there. */
export interface Trouble {
  found: string;
  expected: string;
  advice: string;
}

/** What each field holds, with the unit that a bare number is taken in; ohms need theirs, because both Ω and mΩ are usual. */
const HOLDS: Record<Exclude<keyof SixFields, 'label'>, { dimension: Dimension; bare?: string }> = {
  mass: { dimension: 'mass', bare: 'g' },
  length: { dimension: 'length', bare: 'mm' },
  ohms: { dimension: 'resistance' },
  contacts: { dimension: 'length', bare: 'mm' },
  temperature: { dimension: 'temperature', bare: 'C' },
};

/** The fields that hold something unreadable, each with what to say under it. Blank fields are no trouble. */
export function fieldTroubles(fields: SixFields): Partial<Record<keyof SixFields, Trouble>> {
  const found: Partial<Record<keyof SixFields, Trouble>> = {};
  for (const name of Object.keys(fields) as (keyof SixFields)[]) {
    if (fields[name].trim() === '') continue;
    const read =
      name === 'label'
        ? readSizeText(fields.label)
        : readTypedQuantity(fields[name], HOLDS[name].dimension, HOLDS[name].bare);
    if (!read.ok) found[name] = { found: read.found, expected: read.expected, advice: read.advice ?? '' };
  }
  return found;
}
