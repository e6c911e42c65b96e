import { describe, expect, it } from 'vitest';
import { lag1Autocorrelation, mean, sampleStandardDeviation } from '../../src/numerics/describe.ts';
import { chiSquareUpperTail, normalCdf, studentTCdf } from '../../src/numerics/distributions.ts';
import { SeededDraws } from '../../src/numerics/random.ts';
import { LAYER_AREA, LAYERS, layerEdge, layerHeight, TAIL_START } from '../../src/numerics/ziggurat.ts';
import { expectClose } from '../tolerance.ts';

const SEED = '43757065';
const seeded = (n: number) => new SeededDraws(`${SEED}${n.toString(16).padStart(8, '0')}`);

/** Kolmogorov–Smirnov distance times √n; above 1.95 with probability 0.001 when the draws follow the distribution. */
function kolmogorov(draws: Float64Array, cdf: (x: number) => number): number {
  const sorted = Float64Array.from(draws).sort();
  const n = sorted.length;
  let distance = 0;
  sorted.forEach((x, i) => {
    const p = cdf(x);
    distance = Math.max(distance, p - i / n, (i + 1) / n - p);
  });
  return distance * Math.sqrt(n);
}

describe('the generator', () => {
  it('gives the words of the reference implementation', () => {
    // Source: xoshiro128** 1.1 by Blackman and Vigna, state 1, 2, 3, 4; the first ten words as quoted in the tests of the
    // rand_xoshiro library, which names that C program as their origin.
    const draws = SeededDraws.fromState([1, 2, 3, 4]);
    const wanted = [
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ];
    expect(Array.from({ length: 10 }, () => draws.word())).toEqual(wanted);
  });

  it('jumps as the reference implementation does', () => {
    // Source: states and words of the reference C program, as quoted in the test data of the xoshiro-6502 library.
    const start = SeededDraws.fromState([0x964d4a0c, 0xd40ab895, 0xad7fdecb, 0x3006f0f0]);
    const words = start.copy();
    expect(Array.from({ length: 4 }, () => words.word())).toEqual([0xf1391922, 0x6fe53806, 0xa5be2840, 0xf510ee70]);
    const once = SeededDraws.fromState([0x2a6dd50d, 0x01177499, 0xd7eb7d01, 0xddc48284]);
    const twice = SeededDraws.fromState([0x5efdee5a, 0x3aa13c3d, 0x8cc77479, 0xeb10a58f]);
    expect(start.stream(1)).toEqual(once);
    expect(start.stream(2)).toEqual(twice);
  });

  it('is seeded by SplitMix64', () => {
    // Source: Rosetta Code, "Pseudo-random numbers/Splitmix64": from 1234567 the first two outputs are 6457827717110365317 and
    // 3203168211198807973.
    const draws = new SeededDraws('000000000012d687');
    const state = SeededDraws.fromState([
      Number(6457827717110365317n & 0xffffffffn),
      Number(6457827717110365317n >> 32n),
      Number(3203168211198807973n & 0xffffffffn),
      Number(3203168211198807973n >> 32n),
    ]);
    expect(draws).toEqual(state);
  });

  it('same seed, same digits; text and bytes alike; a longer seed is another one', () => {
    const bytes = Uint8Array.from([0x43, 0x75, 0x70, 0x65, 0x6c, 1, 2, 3]);
    const a = new SeededDraws(bytes);
    const b = new SeededDraws('0x437570656C010203');
    expect(Array.from({ length: 50 }, () => a.normal())).toEqual(Array.from({ length: 50 }, () => b.normal()));
    const longer = new SeededDraws('437570656c01020300');
    expect(longer.word()).not.toBe(new SeededDraws(bytes).word());
    const tails = ['00', '01'].map((end) => new SeededDraws(`${'ab'.repeat(31)}${end}`).word());
    expect(tails[0]).not.toBe(tails[1]);
  });

  it('pinned digits: these must be the same in every engine and on every machine', () => {
    // The uniform and the two normal draws also came out of an independent program in another language (Python).
    const draws = new SeededDraws('437570656c010203');
    expect([draws.uniform(), draws.normal(), draws.normal(), draws.studentT(5), draws.integer(1000)]).toEqual([
      0.8191505473105524, 0.08749372048728571, 0.08265326261070331, 0.15986529654019663, 991,
    ]);
  });

  it.each(['', '00', '0123456789abcd', 'xyz0123456789abc', '0123456789abcde'])('refuses the seed "%s"', (seed) => {
    expect(() => new SeededDraws(seed)).toThrow(RangeError);
  });

  it('refuses an all-zero state, and an integer range that it cannot cover', () => {
    expect(() => SeededDraws.fromState([0, 0, 0, 0])).toThrow(RangeError);
    expect(() => seeded(1).integer(0)).toThrow(RangeError);
    expect(() => seeded(1).integer(2 ** 33)).toThrow(RangeError);
    expect(() => seeded(1).studentT(0)).toThrow(RangeError);
    expect(() => seeded(1).stream(-1)).toThrow(RangeError);
  });

  it('streams are numbered, and copies leave the original alone', () => {
    const origin = seeded(2);
    const third = origin.copy().jump().jump();
    expect(origin.stream(2)).toEqual(third);
    expect(origin.stream(0)).toEqual(origin);
    expect(origin.stream(1).word()).not.toBe(origin.copy().word());
  });
});

describe('uniform draws', () => {
  const draws = seeded(3).fillUniform(new Float64Array(200_000));

  it('lie in (0, 1), with the mean and spread they should have', () => {
    expect(draws.every((u) => u > 0 && u < 1)).toBe(true);
    expectClose(mean(draws), 0.5, { absolute: 0.0026, because: 'four standard errors' });
    expectClose(sampleStandardDeviation(draws), 1 / Math.sqrt(12), { relative: 0.005 });
    expect(kolmogorov(draws, (u) => u)).toBeLessThan(1.95);
    expect(Math.abs(lag1Autocorrelation(draws))).toBeLessThan(4 / Math.sqrt(draws.length));
  });

  it('every bit of a word is set half the time, and no two neighbours lean on each other', () => {
    const generator = seeded(4);
    const n = 100_000;
    const ones = new Array<number>(32).fill(0);
    const agree = new Array<number>(32).fill(0);
    let before = generator.word();
    for (let i = 0; i < n; i++) {
      const word = generator.word();
      for (let bit = 0; bit < 32; bit++) {
        ones[bit] += (word >>> bit) & 1;
        agree[bit] += 1 ^ (((word ^ before) >>> bit) & 1);
      }
      before = word;
    }
    const chi = (counts: number[]) => counts.reduce((sum, c) => sum + (c - n / 2) ** 2 / (n / 4), 0);
    expect(chiSquareUpperTail(chi(ones), 32)).toBeGreaterThan(0.001);
    expect(chiSquareUpperTail(chi(agree), 32)).toBeGreaterThan(0.001);
  });

  it('integers are even', () => {
    const generator = seeded(5);
    const counts = new Array<number>(7).fill(0);
    for (let i = 0; i < 70_000; i++) counts[generator.integer(7)]++;
    const chi = counts.reduce((sum, c) => sum + (c - 10_000) ** 2 / 10_000, 0);
    expect(chiSquareUpperTail(chi, 6)).toBeGreaterThan(0.001);
    expect(generator.integer(1)).toBe(0);
  });
});

describe('normal draws', () => {
  const draws = seeded(6).fillNormal(new Float64Array(1_000_000));

  it('have the moments of the normal distribution', () => {
    const n = draws.length;
    const moment = (k: number) => draws.reduce((sum, x) => sum + x ** k, 0) / n;
    // Standard errors √(E x²ᵏ − (E xᵏ)²)/√n: 1, √2, √15, √96, √945 for k = 1 to 5.
    expectClose(moment(1), 0, { absolute: 4e-3 });
    expectClose(moment(2), 1, { absolute: 4e-3 * Math.SQRT2 });
    expectClose(moment(3), 0, { absolute: 4e-3 * Math.sqrt(15) });
    expectClose(moment(4), 3, { absolute: 4e-3 * Math.sqrt(96) });
    expectClose(moment(5), 0, { absolute: 4e-3 * Math.sqrt(945) });
  });

  it('follow it everywhere, wedges and tail included', () => {
    expect(kolmogorov(draws, normalCdf)).toBeLessThan(1.95);
    expect(
      kolmogorov(
        draws.map((x) => 1.01 * x),
        normalCdf,
      ),
      'one per cent too wide is seen',
    ).toBeGreaterThan(1.95);
    // Cells of equal width out into the tail that the ziggurat draws apart.
    const edges = [-4.2, -TAIL_START, -3.4, -3, -2, -1, -0.3, 0, 0.3, 1, 2, 3, 3.4, TAIL_START, 4.2];
    const counts = new Array<number>(edges.length + 1).fill(0);
    for (const x of draws) {
      let cell = 0;
      while (cell < edges.length && x > edges[cell]) cell++;
      counts[cell]++;
    }
    const below = edges.map(normalCdf);
    const chi = counts.reduce((sum, count, cell) => {
      const share = (cell < edges.length ? below[cell] : 1) - (cell > 0 ? below[cell - 1] : 0);
      const wanted = share * draws.length;
      return sum + (count - wanted) ** 2 / wanted;
    }, 0);
    expect(chiSquareUpperTail(chi, edges.length)).toBeGreaterThan(0.001);
  });

  it('do not lean on the draw before, nor does their size', () => {
    expect(Math.abs(lag1Autocorrelation(draws))).toBeLessThan(4 / 1000);
    expect(Math.abs(lag1Autocorrelation(draws.map((x) => x * x)))).toBeLessThan(4 / 1000);
    const other = seeded(6).jump().fillNormal(new Float64Array(draws.length));
    const product = draws.reduce((sum, x, i) => sum + x * other[i], 0) / draws.length;
    expect(Math.abs(product)).toBeLessThan(4 / 1000);
  });
});

describe('the ziggurat', () => {
  it('has layers of equal area that close at the peak', () => {
    for (let i = 1; i < LAYERS; i++) {
      const area = layerEdge[i] * (layerHeight[i + 1] - layerHeight[i]);
      expectClose(area, LAYER_AREA, { relative: 2e-12, because: `layer ${i}` });
      expectClose(layerHeight[i], Math.exp(-0.5 * layerEdge[i] ** 2), { relative: 1e-13 });
    }
    const tail = Math.sqrt(2 * Math.PI) * normalCdf(-TAIL_START);
    expectClose(TAIL_START * layerHeight[1] + tail, LAYER_AREA, {
      relative: 1e-13,
      because: 'lowest layer with its tail',
    });
  });
});

describe('Student t draws', () => {
  it.each([1.5, 3, 5, 18])('follow the distribution for %d degrees of freedom', (dof) => {
    const generator = seeded(7 + Math.round(dof));
    const draws = Float64Array.from({ length: 100_000 }, () => generator.studentT(dof));
    expect(kolmogorov(draws, (t) => studentTCdf(t, dof))).toBeLessThan(1.95);
    expect(kolmogorov(draws, (t) => studentTCdf(t, dof / 2))).toBeGreaterThan(1.95);
  });

  it('are the normal draws for Infinity', () => {
    expect(seeded(30).studentT(Number.POSITIVE_INFINITY)).toBe(seeded(30).normal());
  });
});
