/**
 * exp and log from +, −, × and ÷ alone. The language leaves the last bit of Math.exp and Math.log to the engine; IEEE 754
 * fixes it for the four operations, so what is built on these has the same digits in every browser and on every machine.
 * They are good to about 1e-16 relative and slower than the engine's own: use them only where digits must be shared.
 */

/** ln 2 in two parts: the first has 21 trailing zero bits, so that small integer multiples of it are exact. */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
/** Below this the result would be subnormal; it is given as 0. */
const LOWEST_EXPONENT = -708;
const HIGHEST_EXPONENT = 709;

const bits = new DataView(new ArrayBuffer(8));

/**
 * eˣ for −708 ≤ x ≤ 709; 0 below.
 *
 * x = k ln 2 + r with |r| ≤ ½ ln 2, eʳ by its power series to r¹⁵ (remainder below 1e-20).
 *
 * @throws RangeError above 709 or when x is not a number.
 */
export function portableExp(x: number): number {
  if (!(x <= HIGHEST_EXPONENT)) throw new RangeError(`exponent must not be above ${HIGHEST_EXPONENT}, got ${x}`);
  if (x < LOWEST_EXPONENT) return 0;
  const k = Math.round(x / (LN2_HIGH + LN2_LOW));
  const r = x - k * LN2_HIGH - k * LN2_LOW;
  let sum = 1;
  for (let n = 15; n >= 1; n--) sum = 1 + (sum * r) / n;
  return sum * powerOfTwo(k);
}

/**
 * ln x for normal positive x.
 *
 * x = m·2ᵏ with √½ < m ≤ √2, ln m = 2 artanh(s), s = (m − 1)/(m + 1), by its series to s²⁵ (remainder below 1e-20).
 *
 * @throws RangeError when x is not a positive normal double.
 */
export function portableLog(x: number): number {
  if (!(x >= 2.2250738585072014e-308) || x === Number.POSITIVE_INFINITY)
    throw new RangeError(`logarithm needs a positive finite number, got ${x}`);
  bits.setFloat64(0, x);
  const high = bits.getUint32(0);
  let k = (high >>> 20) - 1023;
  bits.setUint32(0, (high & 0x000fffff) | 0x3ff00000);
  let m = bits.getFloat64(0);
  if (m > Math.SQRT2) {
    m /= 2;
    k += 1;
  }
  const s = (m - 1) / (m + 1);
  const square = s * s;
  let sum = 1 / 25;
  for (let n = 23; n >= 1; n -= 2) sum = 1 / n + square * sum;
  return k * LN2_HIGH + (2 * s * sum + k * LN2_LOW);
}

/** 2ᵏ for −1022 ≤ k ≤ 1023, exact. */
function powerOfTwo(k: number): number {
  bits.setUint32(0, (k + 1023) << 20);
  bits.setUint32(4, 0);
  return bits.getFloat64(0);
}
