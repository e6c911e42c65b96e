import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkBody } from '../../../src/journal/bodyCheck.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { mergeEntries } from '../../../src/journal/merge.ts';
import { letGo } from '../../../src/journal/sync/outbox.ts';
import { contentHash } from '../../../src/trial/content.ts';
import { fold } from '../../../src/trial/fold.ts';
import { SyncBench } from './bench.ts';

const SEED = 20261125;
const HOURS = 3_600_000;
const MOST_DEVICES = 4;

const cell = fc.constantFrom('a', 'b', 'c');
/** Few names, so that devices describe the same things against each other. */
const saying = fc.oneof(
  fc.tuple(fc.constant('cable'), fc.record({ cable: cell, claimed_size: fc.constantFrom('2 AWG', '4 AWG', '0 AWG') })),
  fc.tuple(fc.constant('specimen'), fc.record({ specimen: cell, cable: cell })),
  fc.tuple(
    fc.constant('reading'),
    fc.record({
      reading: fc.constantFrom('r1', 'r2', 'r3', 'r4'),
      specimen: cell,
      quantity: fc.constant('conductor_mass'),
      // Some of them impossible, as a client of another version might send them.
      value: fc.oneof(
        { weight: 9, arbitrary: fc.integer({ min: 1, max: 99 }).map(String) },
        { weight: 1, arbitrary: fc.constantFrom('many', '-3') },
      ),
      unit: fc.constant('g'),
    }),
  ),
  fc.tuple(fc.constant('strike'), fc.record({ reading: fc.constantFrom('r1', 'r2'), why: cell })),
  fc.tuple(
    fc.constant('retag'),
    fc.record({
      retag: cell,
      kind: fc.constantFrom('swap', 'tag'),
      specimen: fc.constantFrom('a', 'c'),
      becomes: fc.constant('b'),
      from: fc.constantFrom('', '2026-10-03T12:00:10Z'),
      why: cell,
    }),
  ),
  fc.tuple(fc.constant('blinding'), fc.record({ act: fc.constantFrom('blind', 'reveal') })),
);

const photo = fc.record({
  content: fc.constantFrom('0a', '0b', '0c'),
  body: fc.record({ note: fc.constantFrom('n1', 'n2'), about: fc.constant('specimen'), which: cell }),
});

const device = fc.nat(MOST_DEVICES - 1);
const act = fc.oneof(
  { weight: 1, arbitrary: fc.record({ do: fc.constant('photograph' as const), device, photo }) },
  { weight: 4, arbitrary: fc.record({ do: fc.constant('say' as const), device, saying }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('send' as const), device }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('read' as const), device }) },
  {
    weight: 8,
    arbitrary: fc.record({
      do: fc.constant('deliver' as const),
      which: fc.nat(20),
      fate: fc.constantFrom('arrives' as const, 'arrives' as const, 'arrives twice' as const, 'is lost' as const),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('part' as const), device }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('join' as const), device }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('reload' as const), device }) },
  {
    weight: 1,
    arbitrary: fc.record({ do: fc.constant('set clock' as const), device, skew: fc.integer({ min: -9, max: 9 }) }),
  },
);
const restore = fc.record({ do: fc.constant('restore' as const), kept: fc.nat(10) });
type Made<A> = A extends fc.Arbitrary<infer T> ? T : never;
type Act = Made<typeof act> | Made<typeof restore>;

function perform(bench: SyncBench, act: Act): void {
  const device = 'device' in act ? act.device % bench.devices.length : 0;
  if (act.do === 'say') bench.say(device, act.saying[0], act.saying[1]);
  else if (act.do === 'photograph') bench.photograph(device, act.photo.content, act.photo.body);
  else if (act.do === 'send') bench.send(device);
  else if (act.do === 'read') bench.read(device);
  else if (act.do === 'deliver') bench.deliver(act.which, act.fate);
  else if (act.do === 'part') bench.devices[device]!.online = false;
  else if (act.do === 'join') bench.devices[device]!.online = true;
  else if (act.do === 'reload') bench.devices[device]!.reload();
  else if (act.do === 'restore') bench.restore(act.kept);
  else bench.devices[device]!.skew = act.skew * HOURS;
}

const isPossible = (entry: Entry): boolean => checkBody(entry, 0) === null;

/** What must hold at every moment, not only at the end. */
function holdsAlways(bench: SyncBench): void {
  const there = new Set(bench.server.arrived.map(({ id }) => id));
  expect(bench.server.arrived).toHaveLength(there.size);
  for (const id of bench.acknowledged) expect(there.has(id), `${id} was acknowledged and is gone`).toBe(true);
  for (const { outbox } of bench.devices) {
    const ids = outbox.journal.map(({ id }) => id);
    expect(ids).toEqual([...new Set(ids)].sort());
    // A device that has not heard yet that the store was put back still trusts what the old one said.
    if (outbox.store !== '' && outbox.store !== bench.server.store) continue;
    for (const id of ids)
      expect(there.has(id) || outbox.unacknowledged.includes(id), `${id} would never be sent`).toBe(true);
  }
}

describe('devices and a server on a bad network', () => {
  it.each<[string, fc.Arbitrary<Act>]>([
    ['lose nothing, apply nothing twice, and hold the same trial once they have met', act],
    [
      'give a store that was put back from an older copy all that it lost',
      fc.oneof({ weight: 20, arbitrary: act }, restore),
    ],
  ])('%s', (_what, anyAct) => {
    const histories = fc.record({
      skews: fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 2, maxLength: MOST_DEVICES }),
      acts: fc.array(anyAct, { maxLength: 120, size: 'max' }),
    });
    let exchanged = 0;
    let turnedAway = 0;
    fc.assert(
      fc.property(histories, ({ skews, acts }) => {
        const bench = new SyncBench(skews.map((hours) => hours * HOURS));
        for (const one of acts) {
          perform(bench, one);
          holdsAlways(bench);
        }
        bench.heal();
        holdsAlways(bench);
        const all = mergeEntries(bench.said);
        const wanted = all.filter(isPossible);
        const content = contentHash(fold(wanted));
        expect(mergeEntries(bench.server.arrived)).toEqual(wanted);
        expect(bench.server.photos).toEqual(bench.photos);
        for (const device of bench.devices) {
          const { outbox } = device;
          expect(outbox.journal.filter(isPossible)).toEqual(wanted);
          // What was not taken is on the device that said it, with a sentence, and waits for a person.
          const own = outbox.journal.filter((entry) => !isPossible(entry)).map(({ id }) => id);
          expect(Object.keys(outbox.refused).sort()).toEqual(own);
          expect([...outbox.unacknowledged].sort()).toEqual(own);
          expect(device.photosToSend()).toEqual([]);
          device.outbox = own.reduce(letGo, outbox);
          expect(device.outbox.journal).toEqual(wanted);
          expect(contentHash(fold(device.outbox.journal))).toBe(content);
        }
        expect(bench.devices.flatMap(({ outbox }) => Object.keys(outbox.refused))).toEqual([]);
        exchanged += wanted.length;
        turnedAway += all.length - wanted.length;
      }),
      { seed: SEED, numRuns: 200 },
    );
    expect(exchanged).toBeGreaterThan(1500);
    expect(turnedAway).toBeGreaterThan(20);
  });

  it('find what arrives late under an older id, which reading by ids would skip', () => {
    const bench = new SyncBench([0, -5 * HOURS, 0]);
    bench.say(0, 'cable', { cable: 'a', claimed_size: '2 AWG' });
    bench.say(1, 'cable', { cable: 'b', claimed_size: '2 AWG' });
    const [early, late] = [bench.devices[0]!, bench.devices[1]!];
    bench.send(0);
    bench.deliver(0, 'arrives');
    bench.read(2);
    bench.deliver(1, 'arrives');
    bench.deliver(1, 'arrives');
    const reader = bench.devices[2]!;
    expect(reader.outbox.journal).toEqual(early.outbox.journal);
    const lastSeen = reader.outbox.journal.at(-1)!.id;
    expect(late.outbox.journal[0]!.id < lastSeen).toBe(true);
    bench.heal();
    expect(bench.server.arrived.filter(({ id }) => id > lastSeen)).toEqual([]);
    expect(reader.outbox.journal).toHaveLength(2);
  });
});
