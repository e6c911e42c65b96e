import { splitLabelText } from '../../../findings/claims/splitLabelText.ts';
import type { BareUnits, SixFields } from '../../../findings/quick.ts';
import type { Dimension } from '../../../units/dimension.ts';
import { readMetalText } from '../../../units/metalText.ts';
import type { ReadOutcome } from '../../../units/reading.ts';
import { readSizeText } from '../../../units/sizeText.ts';
import { strandsWords } from '../../../units/strandsText.ts';
import { readTypedQuantity } from '../../../units/typedQuantity.ts';

export type FieldName = keyof SixFields;

/** What each field holds, and which of the bare units it takes; ohms need theirs, because both Ω and mΩ are usual. */
const HOLDS: Record<Exclude<FieldName, 'label'>, { dimension: Dimension; bare?: keyof BareUnits }> = {
  mass: { dimension: 'mass', bare: 'mass' },
  length: { dimension: 'length', bare: 'length' },
  ohms: { dimension: 'resistance' },
  contacts: { dimension: 'length', bare: 'length' },
  temperature: { dimension: 'temperature', bare: 'temperature' },
};

/** More digits than any tool shows. */
const DIGITS = 9;

/** How a field that is not blank was understood, in words: `68 °F`, `2 AWG, 33.62 mm² nominal; copper`. */
export function readField(name: FieldName, text: string, bare: BareUnits): ReadOutcome<string> {
  if (name === 'label') return readLabelLine(text);
  const { dimension, bare: kind } = HOLDS[name];
  const read = readTypedQuantity(text, dimension, kind === undefined ? undefined : bare[kind]);
  if (!read.ok) return read;
  const { typedValue, unit } = read.value;
  return { ok: true, value: `${Number(typedValue.toPrecision(DIGITS))} ${unit}`.replace('-', '−') };
}

function readLabelLine(text: string): ReadOutcome<string> {
  const label = splitLabelText(text);
  const size = readSizeText(label.size);
  if (!size.ok) return size;
  const { metal, notTestable } = readMetalText(label.metal);
  const metalWords = metal === 'unsaid' || metal === 'unreadable' ? 'no metal named' : metal;
  const strands = label.strands === null ? [] : [strandsWords(label.strands)];
  const untestable = notTestable.length === 0 ? [] : [`${notTestable.join(', ')}: not testable with these tools`];
  return { ok: true, value: [size.value.readAs, metalWords, ...strands, ...untestable].join('; ') };
}
