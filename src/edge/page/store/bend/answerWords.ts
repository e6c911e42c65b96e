import type { Trial } from '../../../../trial/trial.ts';
import { signOf } from '../bench/names.ts';

/** `KR bends more easily than VN`. */
export function answerWords(trial: Trial, { left, right }: { left: string; right: string }, result: string): string {
  const [a, b] = [signOf(trial, left), signOf(trial, right)];
  if (result === 'same') return `${a} and ${b} bend alike`;
  return result === 'left' ? `${a} bends more easily than ${b}` : `${b} bends more easily than ${a}`;
}
