import { EXPOSING } from './exposing.ts';
import type { Protocol } from './protocol.ts';
import { WEARING } from './wearing.ts';

/** Every endurance test that comes described, in the order in which a bench would take them: dry and cold before heat and fluids. */
export const PROTOCOLS: readonly Protocol[] = [...WEARING, ...EXPOSING];

const plain = (text: string) =>
  text
    .trim()
    .toLowerCase()
    .replace(/[-_\s]+/g, ' ');

/**
 * The protocol that a typed test belongs to: `Scrape`, `sandpaper 150`, `fluid: diesel`. null for a test of one's own.
 *
 * The longest name that the text begins with counts.
 */
export function protocolOf(test: string): Protocol | null {
  const typed = plain(test);
  const named = PROTOCOLS.flatMap((protocol) =>
    [protocol.name, ...protocol.alsoCalled].map((n) => ({ protocol, n: plain(n) })),
  );
  const fits = named.filter(
    ({ n }) => typed === n || typed.startsWith(`${n} `) || typed.startsWith(`${n}:`) || typed.startsWith(`${n},`),
  );
  return fits.sort((x, y) => y.n.length - x.n.length)[0]?.protocol ?? null;
}

/** Whether a test is called a fluid without a word on which: every fluid is a test of its own. */
export const isBareFluid = (test: string): boolean => /^fluids?[\s:,]*$/i.test(test.trim());
