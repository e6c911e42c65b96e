import { SeededDraws } from '../../src/numerics/random.ts';

/** Seeded choices for made-up input. */
export interface Chance {
  /** A whole number from 0 to below `under`. */
  below(under: number): number;
  one<T>(list: readonly T[]): T;
  /** True `percent` times in a hundred. */
  often(percent: number): boolean;
}

export function chanceFrom(seed: number): Chance {
  const draws = new SeededDraws(seed.toString(16).padStart(16, '0'));
  const below = (under: number) => Math.floor(draws.uniform() * under);
  return {
    below,
    one: (list) => list[below(list.length)]!,
    often: (percent) => below(100) < percent,
  };
}

/** Texts that have broken programs before, or that only look like what is wanted. */
export const NASTY = [
  '',
  ' ',
  '0',
  '-0',
  '-1',
  '1e309',
  '1e-400',
  'NaN',
  'Infinity',
  '1,5',
  '1.234,5',
  '١٢',
  '½',
  '1 3/8 in',
  '93.1 g',
  '9'.repeat(400),
  '2 AWG',
  '4/0',
  '0 gauge',
  '35 mm2',
  'null',
  'undefined',
  '__proto__',
  'constructor',
  'toString',
  '=1+1',
  '"',
  '""',
  '\r',
  '\n',
  '\ufeff',
  '\u2028',
  'ǅ',
  'ß',
  '👩‍🔬',
  '<script>',
  '../../etc',
  '%00',
  '2026-02-30',
  '2026-10-03T10:00Z',
  '2026-10-03T25:61:00+99:00',
  '9999-12-31',
  '-271821-04-20',
  'x'.repeat(10_001),
] as const;

/** Bytes with one to six wounds: flipped, cut out, doubled, put in, cut off. */
export function wounded(bytes: Uint8Array, chance: Chance): Uint8Array<ArrayBuffer> {
  let now = new Uint8Array(bytes);
  for (let wounds = 1 + chance.below(6); wounds > 0 && now.length > 0; wounds -= 1) now = wound(now, chance);
  return now;
}

function wound(bytes: Uint8Array<ArrayBuffer>, chance: Chance): Uint8Array<ArrayBuffer> {
  const at = chance.below(bytes.length);
  const length = 1 + chance.below(Math.min(40, bytes.length - at));
  switch (chance.below(6)) {
    case 0: {
      const flipped = bytes.slice();
      flipped[at] = bytes[at]! ^ (1 << chance.below(8));
      return flipped;
    }
    case 1:
      return joined(bytes.subarray(0, at), bytes.subarray(at + length));
    case 2:
      return joined(bytes.subarray(0, at + length), bytes.subarray(at));
    case 3:
      return joined(bytes.subarray(0, at), new TextEncoder().encode(chance.one(NASTY)), bytes.subarray(at));
    case 4:
      return joined(
        bytes.subarray(0, at),
        Uint8Array.from({ length }, () => chance.below(256)),
        bytes.subarray(at + length),
      );
    default:
      return chance.often(20) ? bytes.slice(0, at) : joined(bytes.subarray(0, at), bytes.subarray(at, at + 1), bytes);
  }
}

function joined(...parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
