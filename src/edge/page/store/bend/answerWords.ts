import type { Trial } from '../../../../trial/trial.ts';
import { signOf } from '../bench/names.ts';

/** `KR bends more easily than VN`; `result` as its row has it. */
export function answerWords(trial: Trial, { left, right }: { left: string; right: string }, result = ''): string {
  const [a, b] = [signOf(trial, left), signOf(trial, right)];
  const answer = result.trim().toLowerCase();
  if (answer === 'same') return `${a} and ${b} bend alike`;
  return answer === 'left' ? `${a} bends more easily than ${b}` : `${b} bends more easily than ${a}`;
}
