import { median } from '../../numerics/describe.ts';
import { wholeText } from '../../units/wholeText.ts';
import { sameLength } from '../bench/pieceLength.ts';
import type { CableReadings } from './rowsOfTrial.ts';

/** A length on record that cannot be that of its piece, by what the piece was cut to. */
export interface DoubtfulLength {
  specimen: string;
  /** Its code where it has one. */
  sign: string;
  quantity: 'conductor_length' | 'specimen_length' | 'resistance';
  /** `length of the bare conductor, 35 mm, on a piece that was cut to 730 mm`. */
  words: string;
  /** How many times too long it is by the cut length; below 1: too short. */
  factor: number;
}

const WORDS = {
  conductor_length: 'length of the bare conductor',
  specimen_length: 'length of the piece',
  resistance: 'distance between the voltage contacts',
} as const;

/** Contacts stand in from the ends, but no nearer than this share of the piece, and not beyond it. Ours. */
const CONTACTS = { least: 0.1, most: 1.03 };

const millimetres = (metres: number) => `${wholeText(metres * 1000)} mm`;

/** Lengths and contact distances of a cable that stand far from what their pieces were cut to, in the order of the pieces. */
export function doubtfulLengths({ specimens, groups }: CableReadings): DoubtfulLength[] {
  return specimens.flatMap(({ specimen, code, cutLength, kind }) => {
    if (cutLength === null) return [];
    const doubt = (quantity: DoubtfulLength['quantity'], length: number): DoubtfulLength => ({
      specimen,
      sign: code || specimen,
      quantity,
      words: `${WORDS[quantity]}, ${millimetres(length)}, on a piece that was cut to ${millimetres(cutLength)}`,
      factor: length / cutLength,
    });
    const own = (['conductor_length', 'specimen_length'] as const).flatMap((quantity) => {
      const group = groups.on(specimen, quantity);
      return group === null || sameLength(group.mean, cutLength) ? [] : [doubt(quantity, group.mean)];
    });
    // A piece to take apart may have been ohmed before it was cut shorter.
    if (kind === 'apart') return own;
    const spans = groups.on(specimen, 'resistance')?.readings.flatMap((r) => r.atLength ?? []) ?? [];
    const off = spans.filter((span) => span < CONTACTS.least * cutLength || span > CONTACTS.most * cutLength);
    return off.length === 0 ? own : [...own, doubt('resistance', median(off))];
  });
}
