import { failedAt, type Lifetime, survivedTo } from '../../src/numerics/survival/lifetime.ts';

/** Lifetimes as texts print them: `6 6 6+` is two failures and a survivor at 6. */
export function livesOf(printed: string): Lifetime[] {
  return printed
    .trim()
    .split(/\s+/)
    .map((one) => (one.endsWith('+') ? survivedTo(Number(one.slice(0, -1))) : failedAt(Number(one))));
}
