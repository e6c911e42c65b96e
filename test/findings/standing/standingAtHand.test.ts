/** The standing that a page holds at hand: the digits of the findings, and only what was changed moves. */
import { describe, expect, it } from 'vitest';
import { decideBy } from '../../../src/findings/standing/decide.ts';
import { orderBy } from '../../../src/findings/standing/orderBy.ts';
import { prepareAtHand, standingGroundOf } from '../../../src/findings/standing/standingAtHand.ts';
import { weightingOf, wishOf } from '../../../src/findings/standing/weighting.ts';
import { fold } from '../../../src/trial/fold.ts';
import { Bench } from '../bench.ts';

function bench(settings: Readonly<Record<string, string>> = {}): Bench {
  const b = new Bench()
    .carefulTools()
    .cable('full', '2 AWG', 'OFC', { price: '40', currency: 'EUR', price_per: 'metre' })
    .cable('short', '2 AWG', 'OFC', { price: '20', currency: 'EUR', price_per: 'metre' });
  for (const cable of ['full', 'short']) b.piece(`${cable}-p`, cable);
  b.everything('full-p', 33.8).everything('short-p', 28);
  for (const [setting, value] of Object.entries(settings)) b.say('setting', { setting, value });
  return b;
}

const DRAWS = 20_000;
const KEPT = { standing_weights: 'copper 60, price 40', standing_scale_price: '40 to 4' };

describe('the standing at hand', () => {
  it('says the same digits as the findings', () => {
    const b = bench(KEPT);
    const prepared = prepareAtHand(standingGroundOf(fold(b.entries)), { draws: DRAWS })!;
    const ids = prepared.criteria.map(({ id }) => id);
    const decide = decideBy(prepared, weightingOf(wishOf(prepared.settings), ids));
    expect(decide).toEqual(b.findings().decide);
  });

  it('gives the order alone as it stands in the whole', () => {
    const prepared = prepareAtHand(standingGroundOf(fold(bench().entries)), { draws: DRAWS })!;
    const ids = prepared.criteria.map(({ id }) => id);
    for (const wish of [null, { numbers: new Map([['price', 1]]) }, { ranking: [['copper'], ['price']] }]) {
      const weighting = weightingOf(wish, ids);
      const [order, decide] = [orderBy(prepared, weighting), decideBy(prepared, weighting)];
      expect(order.sentence).toBe(decide.sentence);
      expect(order.weights.map(({ weight }) => weight)).toEqual(decide.criteria.map(({ weight }) => weight));
      const bare = decide.cables.map((c) => ({
        cable: c.cable,
        name: c.name,
        place_probability: c.place_probability,
        probability_first: c.probability_first,
        band: c.band,
        cannot_be_told_from: c.cannot_be_told_from,
      }));
      expect(order.cables).toEqual(bare);
    }
  });

  it('moves only the worth that was rescaled when a scale is tried out', () => {
    const ground = standingGroundOf(fold(bench(KEPT).entries));
    const kept = prepareAtHand(ground, { draws: 2000 })!;
    const tried = prepareAtHand(ground, { draws: 2000, scales: { standing_scale_price: '80 to 4' } })!;
    const of = (p: typeof kept, id: string) => p.drawn.values[p.criteria.findIndex((c) => c.id === id)]!;
    expect([...of(tried, 'copper')]).toEqual([...of(kept, 'copper')]);
    expect([...of(tried, 'price')]).not.toEqual([...of(kept, 'price')]);
    expect(tried.criteria.find((c) => c.id === 'price')!.scale).toMatchObject({ worst: 80, best: 4 });
  });

  it.each([
    ['80 to 4', 'linear'],
    ['60 to 10 flat', 'flat'],
    ['threshold at most 30', 'threshold'],
  ])('puts kept draws on the scale %s, digit for digit as drawn anew', (scale) => {
    const b = bench({ ...KEPT, standing_scale_copper: 'threshold at least 0.9' });
    b.cable('bare', '2 AWG', 'OFC').piece('bare-p', 'bare').weigh('bare-p', 30);
    const ground = standingGroundOf(fold(b.entries));
    const scales = { standing_scale_price: scale, standing_scale_copper: '0.7 to 1' };
    const before = prepareAtHand(ground, { draws: 3000, keepRaw: true })!;
    const moved = prepareAtHand(ground, { draws: 3000, scales, keepRaw: true, before })!;
    const anew = prepareAtHand(ground, { draws: 3000, scales, keepRaw: true })!;
    // One price is not known, so that what stands in its stead moves too.
    expect(moved.known.flat()).toContain(false);
    expect(moved.drawn.values.map((of) => [...of])).toEqual(anew.drawn.values.map((of) => [...of]));
    expect([...moved.means]).toEqual([...anew.means]);
    expect(moved.criteria).toEqual(anew.criteria);
    expect(moved.alike).toEqual(anew.alike);
    expect(moved.drawn.values[0]).not.toEqual(before.drawn.values[0]);
    expect(() =>
      prepareAtHand(ground, { draws: 3000, scales, before: prepareAtHand(ground, { draws: 3000 }) }),
    ).toThrow(RangeError);
  });

  it('is there without a word in the plan, and null where nothing can be compared', () => {
    expect(bench().findings().decide).toBeNull();
    expect(prepareAtHand(standingGroundOf(fold(bench().entries)), { draws: 100 })).not.toBeNull();
    const one = new Bench().carefulTools().cable('x', '2 AWG', 'OFC').piece('p', 'x').everything('p', 33);
    expect(prepareAtHand(standingGroundOf(fold(one.entries)), { draws: 100 })).toBeNull();
  });
});
