import type { BareUnits, SixFields } from '../../../../findings/quick.ts';

export interface FieldWords {
  name: keyof SixFields;
  label: string;
  hint: string;
  /** As somebody would type it who goes by these units. */
  example: (units: BareUnits) => string;
}

/** What the six fields are called, in the order in which they are asked. The examples are one invented cable. */
export const FIELD_WORDS: readonly FieldWords[] = [
  {
    name: 'label',
    label: 'What the label says',
    hint: 'size and metal, word for word',
    example: () => '2 AWG OFC',
  },
  {
    name: 'mass',
    label: 'Mass of the bare conductor',
    hint: 'jacket off, strands clean',
    example: ({ mass }) => (mass === 'oz' ? '3.37 oz' : '95.6 g'),
  },
  {
    name: 'length',
    label: 'Length that was weighed',
    hint: 'cut square, measured straight',
    example: ({ length }) => (length === 'in' ? '11 13/16 in' : '300 mm'),
  },
  {
    name: 'ohms',
    label: 'Ohms',
    hint: 'four wires; the whole length is best',
    example: () => '0.76 mohm',
  },
  {
    name: 'contacts',
    label: 'Length between the voltage contacts',
    hint: 'not the cut length',
    example: ({ length }) => (length === 'in' ? '59 in' : '1500 mm'),
  },
  {
    name: 'temperature',
    label: 'Temperature of the copper',
    hint: 'of the strands, not of the room',
    example: ({ temperature }) => (temperature === 'F' ? '68 F' : '20 C'),
  },
];
