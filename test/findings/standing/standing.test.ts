/** The standing, from rows as they are typed to the part of the findings that speaks of it. */
import { describe, expect, it } from 'vitest';
import { Findings } from '../../../src/findings/schema.ts';
import type { Decide } from '../../../src/findings/shapes/decide.ts';
import { expectClose } from '../../tolerance.ts';
import { Bench, CLAD, codes } from '../bench.ts';

/** Three cables of one label: full copper and dear, short of copper and cheap, clad and cheapest. */
function three(settings: Readonly<Record<string, string>>, more: (b: Bench) => Bench = (b) => b): Bench {
  const b = new Bench()
    .carefulTools()
    .cable('full', '2 AWG', 'OFC', { price: '40', currency: 'EUR', price_per: 'metre' })
    .cable('short', '2 AWG', 'OFC', { price: '20', currency: 'EUR', bought_length: '2', price_per: 'piece' })
    .cable('clad', '2 AWG', 'OFC', { price: '2.40', currency: 'EUR', price_per: 'foot' });
  for (const cable of ['full', 'short', 'clad']) b.piece(`${cable}-p`, cable);
  more(b);
  b.everything('full-p', 33.8).everything('short-p', 28).weigh('clad-p', 30, CLAD).ohm('clad-p', 30, CLAD);
  for (const [setting, value] of Object.entries(settings)) b.say('setting', { setting, value });
  return b;
}

const SCALES = {
  standing_scale_price: '40 to 4',
  standing_scale_resistance: '0.9 to 0.5',
  standing_scale_area: '20 to 36',
};
const decideOf = (b: Bench): Decide => b.findings().decide!;
const of = (d: Decide, cable: string) => d.cables.find((c) => c.cable === cable)!;

describe('the standing', () => {
  it('is null where the plan says nothing of one, and where nothing can be compared', () => {
    expect(three({}).findings().decide).toBeNull();
    expect(three({ standing_job: 'long run' }).findings({ standingDraws: 0 }).decide).toBeNull();
    const one = new Bench().carefulTools().cable('x', '2 AWG', 'OFC').piece('p', 'x').everything('p', 33);
    expect(one.say('setting', { setting: 'standing_job', value: 'long run' }).findings().decide).toBeNull();
  });

  it('fits the published shape and gives the same digits again', () => {
    const b = three({ standing_weights: 'copper 60, price 40', ...SCALES });
    const [one, again] = [b.findings(), b.findings()];
    expect(Findings.parse(one).decide).toEqual(again.decide);
    expect(one.decide!.draws).toBe(20_000);
  });

  it('orders by what counts, and says it without a total', () => {
    const copper = decideOf(three({ standing_weights: 'copper 1', ...SCALES }));
    expect(copper.cables.map((c) => c.cable)).toEqual(['full', 'short', 'clad']);
    expect(copper.cables.map((c) => c.band)).toEqual([1, 2, 3]);
    expect(copper.sentence).toBe('By these weights full comes first (chance more than 99 %); then short; last clad.');
    const price = decideOf(three({ standing_weights: 'price 1', ...SCALES }));
    expect(price.cables.map((c) => c.cable)).toEqual(['clad', 'short', 'full']);
    expect(of(price, 'clad').weighted_value).toBeCloseTo((40 - 2.4 / 0.3048) / 36, 6);
    expectClose(of(price, 'clad').u, 0, {
      absolute: 1e-5,
      because: 'a price is exact; worth is kept in single precision',
    });
    expect(price.sentence + price.taste_sentence).not.toMatch(/0\.\d|point|score|total/);
  });

  it('tells what would have to matter more', () => {
    const d = decideOf(three({ standing_weights: 'copper 75, price 25', ...SCALES }));
    expect(d.cables[0].cable).toBe('full');
    expect(of(d, 'full').to_come_first).toBeNull();
    // Worth by copper and price: full 1 and 0, short less and more: level where w · lead = (1 − w) · gain.
    const short = of(d, 'short').to_come_first!;
    const w = short.weights.find((x) => x.criterion === 'copper')!.weight;
    const worth = (cable: string, criterion: string) =>
      of(d, cable).worth.find((x) => x.criterion === criterion)!.worth;
    const lead = worth('full', 'copper') - worth('short', 'copper');
    const gain = worth('short', 'price') - worth('full', 'price');
    expectClose(w, gain / (lead + gain), { relative: 1e-9 });
    expect(of(d, 'short').to_come_first_text).toMatch(/^short would come first if price counted \d+ % instead of 25 %/);
  });

  it('says when no weights bring a cable first', () => {
    const d = decideOf(three({ standing_weights: 'copper 60, resistance 40', ...SCALES }));
    expect(of(d, 'clad').to_come_first).toBeNull();
    expect(of(d, 'clad').to_come_first_text).toBe('No weights of these criteria bring clad to the first place.');
    expect(of(d, 'clad').central_weights).toBeNull();
    expect(of(d, 'clad').central_text).toBe('clad never comes first within these weights.');
  });

  it('takes the weights of an order of importance from the rank-order centroid', () => {
    const d = decideOf(three({ standing_ranking: 'price, copper = resistance', ...SCALES }));
    expect(d.weights_from).toBe('ranking');
    const weights = Object.fromEntries(d.criteria.map((c) => [c.id, c.weight]));
    expectClose(weights.price, 11 / 18, { relative: 1e-12 });
    expectClose(weights.copper, (5 / 18 + 2 / 18) / 2, { relative: 1e-12 });
    expect(weights.resistance).toBe(weights.copper);
  });

  it('takes the weights of a job, sharing what was not measured among the rest', () => {
    const f = three({ standing_job: 'Cheapest that carries it', ...SCALES }).findings();
    const weights = Object.fromEntries(f.decide!.criteria.map((c) => [c.id, c.weight]));
    expect(f.decide!.job).toBe('cheapest that carries it');
    expectClose(weights.price, 0.4 / 0.8, { relative: 1e-12 });
    expectClose(weights.resistance, 0.25 / 0.8, { relative: 1e-12 });
    expect(codes(f)).toContain('standing-left-out');
    expect(f.warnings.find((w) => w.code === 'standing-left-out')!.text).toContain('current');
  });
});

describe('what is not known', () => {
  it('ranges over its whole scale, is named, and makes the place less sure', () => {
    const priceless = new Bench()
      .carefulTools()
      .cable('a', '2 AWG', 'OFC', { price: '30', currency: 'EUR', price_per: 'metre' })
      .cable('b', '2 AWG', 'OFC')
      .piece('a-p', 'a')
      .piece('b-p', 'b')
      .everything('a-p', 33.8)
      .everything('b-p', 33.8)
      .say('setting', { setting: 'standing_weights', value: 'price 1' })
      .say('setting', { setting: 'standing_scale_price', value: '40 to 0' });
    const f = priceless.findings();
    const b = of(f.decide!, 'b');
    expect(b.unknown).toEqual(['price']);
    expectClose(b.weighted_value, 0.5, { absolute: 0.01, because: 'even over the scale, 20 000 draws' });
    expectClose(b.probability_first, 0.75, { absolute: 0.015, because: 'worth of a is 0.25' });
    const warning = f.warnings.find((w) => w.code === 'standing-unknown')!;
    expect(warning.cable).toBe('b');
    expect(warning.text).toContain('Anything from 40 to 0 EUR/m');
  });

  it('a price in another currency counts as not known', () => {
    const b = three({ standing_weights: 'price 1', ...SCALES }, (bench) =>
      bench
        .cable('other', '2 AWG', 'OFC', { price: '9', currency: 'USD', price_per: 'metre' })
        .piece('other-p', 'other')
        .everything('other-p', 33),
    );
    const f = b.findings();
    expect(codes(f)).toContain('standing-currencies');
    expect(of(f.decide!, 'other').unknown).toEqual(['price']);
  });
});

describe('scales', () => {
  it('that nobody stated are said to be suggestions; stated ones are not', () => {
    const loose = three({ standing_weights: 'price 1, resistance 1, copper 1' }).findings();
    expect(loose.warnings.find((w) => w.code === 'standing-scales-suggested')!.text).toContain('resistance, price');
    const tight = three({ standing_weights: 'price 1, resistance 1, copper 1', ...SCALES }).findings();
    expect(codes(tight)).not.toContain('standing-scales-suggested');
    expect(tight.decide!.criteria.find((c) => c.id === 'price')).toMatchObject({
      worst: 40,
      best: 4,
      fixed: true,
      better: 'less',
    });
  });

  it('hold when the last cable is taken away: nobody else moves', () => {
    const all = decideOf(three({ standing_weights: 'copper 50, price 30, resistance 20', ...SCALES }));
    const last = all.cables[all.cables.length - 1].cable;
    const b = three({ standing_weights: 'copper 50, price 30, resistance 20', ...SCALES });
    const left = new Bench();
    left.entries.length = 0;
    for (const e of b.entries) {
      const body = e.body as Record<string, string>;
      if (body.cable === last || body.specimen === `${last}-p`) continue;
      left.entries.push(e);
    }
    const fewer = decideOf(left);
    expect(fewer.cables.map((c) => c.cable)).toEqual(all.cables.slice(0, -1).map((c) => c.cable));
    for (const c of fewer.cables)
      expectClose(c.weighted_value, of(all, c.cable).weighted_value, {
        absolute: 0.01,
        because: 'other draws, and the tools are known a little less well with one cable fewer',
      });
  });

  it('and weights that cannot be read are passed over with a word', () => {
    const f = three({
      standing_weights: 'copper lots',
      standing_scale_price: 'cheap',
      standing_job: 'long run',
    }).findings();
    expect(f.decide!.weights_from).toBe('job');
    const texts = f.warnings.filter((w) => w.code === 'standing-setting-not-understood').map((w) => w.text);
    expect(texts).toHaveLength(2);
    expect(texts.join(' ')).toContain('"copper lots"');
  });
});

describe('references', () => {
  it('stand outside the order', () => {
    const b = three({ standing_weights: 'copper 1', ...SCALES }, (bench) =>
      bench.cable('ref', '2 AWG', 'OFC', { role: 'reference' }).piece('ref-p', 'ref').everything('ref-p', 40),
    );
    const d = decideOf(b);
    expect(d.cables.map((c) => c.cable)).not.toContain('ref');
    expect(d.outside.map((c) => c.cable)).toEqual(['ref']);
    expectClose(d.outside[0].weighted_value, 1, { absolute: 1e-6 });
  });
});

describe('value for money', () => {
  const d = decideOf(three({ standing_weights: 'copper 1', ...SCALES }));
  const value = (cable: string) => d.value.find((v) => v.cable === cable)!;

  it('is by the metre, however the price was typed', () => {
    expectClose(value('full').price_per_m!, 40, { relative: 1e-12 });
    expectClose(value('short').price_per_m!, 10, { relative: 1e-12, because: '20 for a piece of 2 m' });
    expectClose(value('clad').price_per_m!, 2.4 / 0.3048, { relative: 1e-12, because: 'a foot is 0.3048 m exactly' });
  });

  it('counts real copper only', () => {
    expectClose(value('full').price_per_m_mm2!.value, 40 / 33.8, { relative: 0.006, because: 'tools ±0.5 %' });
    // A tenth to a fifth of such clad metal is copper by volume.
    const clad = value('clad').price_per_m_mm2!.value;
    expect(clad).toBeGreaterThan(2.4 / 0.3048 / (30 * 0.2));
    expect(clad).toBeLessThan(2.4 / 0.3048 / (30 * 0.08));
    const [low, high] = value('full').price_per_m_mm2!.interval;
    expect(low).toBeLessThan(40 / 33.8);
    expect(high).toBeGreaterThan(40 / 33.8);
  });

  it('and what one metre at one milliohm costs', () => {
    const r = three({}).of('short').resistance_20C!.value;
    expectClose(value('short').price_per_m_at_one_mohm!.value, 10 * r, { relative: 1e-12 });
    expect(value('short').text).toMatch(/^10\.00 EUR a metre; .* EUR for one metre at one milliohm\.$/);
  });

  it('the edge leaves out what another cable beats in both', () => {
    const picture = d.edges.find((e) => e.a === 'price' && e.b === 'resistance')!;
    const on = Object.fromEntries(picture.cables.map((c) => [c.cable, c.on_edge]));
    expect(on).toEqual({ full: true, short: true, clad: true });
    const worse = decideOf(
      three({ standing_weights: 'copper 1', ...SCALES }, (bench) =>
        bench
          .cable('worse', '2 AWG', 'OFC', { price: '45', currency: 'EUR', price_per: 'metre' })
          .piece('worse-p', 'worse')
          .everything('worse-p', 30),
      ),
    );
    const beaten = worse.edges.find((e) => e.a === 'price' && e.b === 'copper')!.cables;
    expect(beaten.find((c) => c.cable === 'worse')!.on_edge).toBe(false);
    expect(beaten.find((c) => c.cable === 'worse')!.probability).toBeLessThan(0.01);
  });
});

describe('endurance in the order', () => {
  const tried = (b: Bench, cable: string, amount: string, outcome: string) =>
    b.say('endurance', { specimen: `${cable}-p`, test: 'Scrape', amount, unit: 'strokes', outcome });

  it('counts what was borne, and leaves open how much longer survivors last', () => {
    const b = three({ standing_weights: 'endurance 1', 'standing_scale_endurance:scrape': '0 to 1000' }, (bench) => {
      for (const cable of ['full', 'short'])
        for (const n of ['1', '2', '3', '4']) bench.piece(`${cable}-${n}`, cable, { kind: 'abuse' });
      for (const n of ['1', '2', '3', '4']) {
        bench.say('endurance', {
          specimen: `full-${n}`,
          test: 'Scrape',
          amount: '500',
          unit: 'strokes',
          outcome: 'survived',
        });
        bench.say('endurance', {
          specimen: `short-${n}`,
          test: 'Scrape',
          amount: String(90 + 5 * Number(n)),
          unit: 'strokes',
          outcome: 'failed',
        });
      }
      return tried(bench, 'clad', '60', 'failed');
    });
    const d = decideOf(b);
    expect(d.criteria.find((c) => c.weight > 0)).toMatchObject({
      id: 'endurance:scrape',
      unit: 'strokes',
      fixed: true,
    });
    expect(d.cables[0].cable).toBe('full');
    expect(of(d, 'full').probability_first).toBeGreaterThan(0.99);
    expect(of(d, 'full').u, 'survivors last anything from there on').toBeGreaterThan(0.1);
    expectClose(of(d, 'short').weighted_value, 0.1, { relative: 0.15, because: 'median near 103 strokes' });
  });
});
