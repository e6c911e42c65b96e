import { portableExp, portableLog } from './portableElementary.ts';
import { stateFromSeed } from './seed.ts';
import { layerEdge, layerHeight, TAIL_START } from './ziggurat.ts';

const TWO_TO_MINUS_32 = 2 ** -32;
const TWO_TO_MINUS_31 = 2 ** -31;
const TWO_TO_MINUS_23 = 2 ** -23;
const TWO_TO_MINUS_20 = 2 ** -20;
/** Jump polynomial of xoshiro128: as many steps as 2⁶⁴ calls. Blackman and Vigna's reference implementation, version 1.1. */
const JUMP_WORDS = [0x8764000b, 0xf542d2d3, 0x6fa035c3, 0x77f2db5b];

// Own names for the tables: a draw then reads a constant of this file, which engines inline.
const EDGE = layerEdge;
const HEIGHT = layerHeight;
const TAIL = TAIL_START;

/**
 * Seeded random draws: the same seed gives the same digits on every machine.
 *
 * The generator is xoshiro128** 1.1 (D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators", ACM
 * Transactions on Mathematical Software 47(4), 2021): 32-bit words, period 2¹²⁸ − 1. Integer operations and IEEE +, −, ×, ÷, √
 * only; where a logarithm or exponential is needed (the ziggurat's rare wedge and tail, Student t) it is built from those,
 * see portableElementary.ts. Not for secrets.
 */
export class SeededDraws {
  private a = 0;
  private b = 0;
  private c = 0;
  private d = 0;

  /**
   * @param seed at least 8 bytes, as hexadecimal text or bytes, see {@link stateFromSeed}.
   * @throws RangeError when the seed is too short or not hexadecimal.
   */
  constructor(seed: string | Uint8Array) {
    this.setState(stateFromSeed(seed));
  }

  /** A generator at a given state of four 32-bit words. @throws RangeError when all four are zero. */
  static fromState(words: ArrayLike<number>): SeededDraws {
    const draws = new SeededDraws('0000000000000000');
    draws.setState(words);
    return draws;
  }

  private setState(words: ArrayLike<number>): void {
    this.a = words[0] | 0;
    this.b = words[1] | 0;
    this.c = words[2] | 0;
    this.d = words[3] | 0;
    // The all-zero state is the one fixed point of the generator; SplitMix64 gives it for no seed in practice.
    if ((this.a | this.b | this.c | this.d) === 0)
      throw new RangeError('the state of a generator must not be all zero');
  }

  /** The next 32 random bits as a signed integer. */
  private next(): number {
    const b = this.b;
    const five = Math.imul(b, 5);
    const result = Math.imul((five << 7) | (five >>> 25), 9);
    const c = this.c ^ this.a;
    const d = this.d ^ b;
    this.b = b ^ c;
    this.a ^= d;
    this.c = c ^ (b << 9);
    this.d = (d << 11) | (d >>> 21);
    return result;
  }

  /** The next 32 random bits as an integer from 0 to 2³² − 1. */
  word(): number {
    return this.next() >>> 0;
  }

  /** A uniform draw in (0, 1): the midpoint of one of 2⁵² equal cells, so never 0 and never 1. */
  uniform(): number {
    const high = this.next() >>> 0;
    const low = this.next() >>> 12;
    // 32 bits, 20 further bits and half a cell are 53 significant bits, so nothing is rounded up to 1.
    return (high + (low + 0.5) * TWO_TO_MINUS_20) * TWO_TO_MINUS_32;
  }

  /** A uniform integer from 0 to n − 1, exactly even. @throws RangeError unless 1 ≤ n ≤ 2³². */
  integer(n: number): number {
    if (!(Number.isInteger(n) && n >= 1 && n <= 2 ** 32))
      throw new RangeError(`integer(n) needs a whole n from 1 to 2^32, got ${n}`);
    const limit = 2 ** 32 - (2 ** 32 % n);
    for (;;) {
      const word = this.next() >>> 0;
      if (word < limit) return word % n;
    }
  }

  /** A draw from the standard normal distribution, by a ziggurat of 256 layers. */
  normal(): number {
    for (;;) {
      const first = this.next();
      const layer = first & 0xff;
      // 32 + 23 bits from −1 to 1 across the layer; the layer's number comes from bits of its own.
      const x = (this.next() + (first >>> 9) * TWO_TO_MINUS_23) * TWO_TO_MINUS_31 * EDGE[layer];
      if (Math.abs(x) < EDGE[layer + 1]) return x;
      if (layer === 0) return x < 0 ? -this.normalTail() : this.normalTail();
      const height = HEIGHT[layer] + this.uniform() * (HEIGHT[layer + 1] - HEIGHT[layer]);
      if (height < portableExp(-0.5 * x * x)) return x;
    }
  }

  /** |Z| given |Z| > the tail's start, by an exponential envelope (Marsaglia 1964). */
  private normalTail(): number {
    for (;;) {
      const x = -portableLog(this.uniform()) / TAIL;
      const y = -portableLog(this.uniform());
      if (2 * y > x * x) return TAIL + x;
    }
  }

  /**
   * A draw from Student's t with `dof` degrees of freedom (location 0, scale 1; its standard deviation is √(ν/(ν−2)), above
   * 1): Z / √(χ²/ν). Infinity gives the normal.
   *
   * @throws RangeError when dof is not positive.
   */
  studentT(dof: number): number {
    if (!(dof > 0)) throw new RangeError(`degrees of freedom must be positive, got ${dof}`);
    if (dof === Number.POSITIVE_INFINITY) return this.normal();
    return this.normal() / Math.sqrt((2 * this.gamma(dof / 2)) / dof);
  }

  /**
   * A draw from the gamma distribution of the given shape and scale 1, by squeezing a transformed normal.
   *
   * Source: G. Marsaglia, W. W. Tsang, "A simple method for generating gamma variables", ACM Transactions on Mathematical
   * Software 26(3), 2000.
   */
  gamma(shape: number): number {
    if (shape < 1) return this.gamma(shape + 1) * portableExp(portableLog(this.uniform()) / shape);
    const d = shape - 1 / 3;
    const c = 1 / Math.sqrt(9 * d);
    for (;;) {
      const x = this.normal();
      const root = 1 + c * x;
      if (root <= 0) continue;
      const v = root * root * root;
      if (portableLog(this.uniform()) < 0.5 * x * x + d * (1 - v + portableLog(v))) return d * v;
    }
  }

  /** Fills the array with standard normal draws and gives it back. */
  fillNormal(into: Float64Array): Float64Array {
    for (let i = 0; i < into.length; i++) into[i] = this.normal();
    return into;
  }

  /** Fills the array with uniform draws in (0, 1) and gives it back. */
  fillUniform(into: Float64Array): Float64Array {
    for (let i = 0; i < into.length; i++) into[i] = this.uniform();
    return into;
  }

  /** Moves on by 2⁶⁴ words, further than any run will draw, and gives itself back: the start of the next parallel stream. */
  jump(): this {
    const sum = [0, 0, 0, 0];
    for (const word of JUMP_WORDS)
      for (let bit = 0; bit < 32; bit++) {
        if ((word >>> bit) & 1) {
          sum[0] ^= this.a;
          sum[1] ^= this.b;
          sum[2] ^= this.c;
          sum[3] ^= this.d;
        }
        this.next();
      }
    this.setState(sum);
    return this;
  }

  /** A generator at this one's present state; the two then go their own ways. */
  copy(): SeededDraws {
    return SeededDraws.fromState([this.a, this.b, this.c, this.d]);
  }

  /** Stream number `index` counted from here: a copy that has jumped that many times. @throws RangeError for a negative index. */
  stream(index: number): SeededDraws {
    if (!(Number.isInteger(index) && index >= 0)) throw new RangeError(`a stream is numbered from 0, got ${index}`);
    const draws = this.copy();
    for (let i = 0; i < index; i++) draws.jump();
    return draws;
  }
}
