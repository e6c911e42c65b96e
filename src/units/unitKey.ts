/** Longest unit text worth looking up: `degrees fahrenheit`, `square millimetres`, `milliohms per 1000 feet`. */
const LONGEST = 40;

/** `MV`, `MA`, `MΩ/m` …: a capital M before these would be mega, a million-million-fold misreading if taken for milli. */
const MEGA_LIKE = /^M ?(?:[oO][hH][mM][sS]?|V|A)(?![a-z])/;

/**
 * Brings the spellings of one unit to one key: compatibility forms folded (², Ω U+2126, µ U+00B5, no-break spaces, ℃),
 * Ω → `ohm`, μ → `u`, primes → quotes, lower case, single spaces, no full stops.
 *
 * Returns null when the text cannot name a unit without a guess, such as `MV`. `MΩ` becomes `megohm`, `K` becomes `kelvin`
 * (a small `k` stays itself and names nothing).
 */
export function unitKey(text: string): string | null {
  if (text.length > LONGEST) return null;
  const plain = text
    .replace(/º/g, '°')
    .normalize('NFKC')
    .replace(/[Ωω]/g, 'ohm')
    .replace(/μ/g, 'u')
    .replace(/[′‘’]/g, "'")
    .replace(/''|[“”‟]/g, '"')
    .replace(/\./g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  if (plain === 'K') return 'kelvin';
  if (/^M ?[oO][hH][mM][sS]?$/.test(plain)) return 'megohm';
  if (MEGA_LIKE.test(plain)) return null;
  return plain.toLowerCase();
}
