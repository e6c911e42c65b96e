import { readTypedNumber } from '../../../../units/typedNumber.ts';

/** A number as people type it, comma or point; NaN for what is none, or may mean two. */
export function typedNumber(text: string): number {
  const read = readTypedNumber(text);
  return read.ok ? read.value.value : Number.NaN;
}
