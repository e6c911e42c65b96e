import { readTypedNumber } from '../../units/typedNumber.ts';

const WHOLE = 100;

/** What was typed for a share of 100: the whole number, or one sentence on why it is none. */
export function shareTyped(typed: string): { share: number } | { trouble: string } {
  const read = readTypedNumber(typed.replace(/\s*%$/, ''), 'count');
  const share = read.ok ? read.value.value : Number.NaN;
  if (Number.isInteger(share) && share >= 0 && share <= WHOLE) return { share };
  return { trouble: `Found "${typed.trim()}"; expected a whole number from 0 to ${WHOLE}.` };
}
