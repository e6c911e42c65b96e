const MASK_64 = 0xffffffffffffffffn;

/**
 * Expands a seed of 8 or more bytes into four 32-bit words, the state of a generator.
 *
 * SplitMix64 (G. L. Steele, D. Lea, C. H. Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014), the seeding
 * that the authors of xoshiro advise: each output word is the next of SplitMix64, low half first. A seed of exactly 8 bytes
 * is its starting value, most significant byte first; longer seeds are absorbed 8 bytes at a time (the last zero-filled).
 *
 * @param seed hexadecimal text (an even number of digits, with or without 0x) or bytes.
 * @throws RangeError when the seed is shorter than 8 bytes or the text is not hexadecimal.
 */
export function stateFromSeed(seed: string | Uint8Array): Int32Array {
  const bytes = typeof seed === 'string' ? bytesFromHex(seed) : seed;
  if (bytes.length < 8) throw new RangeError(`a seed needs at least 8 bytes, got ${bytes.length}`);
  let x = word64(bytes, 0);
  for (let at = 8; at < bytes.length; at += 8) x = mix(step(x)) ^ word64(bytes, at);
  const state = new Int32Array(4);
  for (let i = 0; i < 4; i += 2) {
    x = step(x);
    const word = mix(x);
    state[i] = Number(word & 0xffffffffn);
    state[i + 1] = Number(word >> 32n);
  }
  return state;
}

function step(x: bigint): bigint {
  return (x + 0x9e3779b97f4a7c15n) & MASK_64;
}

function mix(x: bigint): bigint {
  let z = x;
  z = ((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n) & MASK_64;
  z = ((z ^ (z >> 27n)) * 0x94d049bb133111ebn) & MASK_64;
  return z ^ (z >> 31n);
}

function word64(bytes: Uint8Array, at: number): bigint {
  let word = 0n;
  for (let i = at; i < at + 8; i++) word = (word << 8n) | BigInt(bytes[i] ?? 0);
  return word;
}

function bytesFromHex(text: string): Uint8Array {
  const digits = text.startsWith('0x') ? text.slice(2) : text;
  if (!/^([0-9a-fA-F]{2})+$/.test(digits)) throw new RangeError(`a seed is hexadecimal digits in pairs, got "${text}"`);
  return Uint8Array.from(digits.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));
}
