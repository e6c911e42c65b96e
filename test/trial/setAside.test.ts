import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findingsOf } from '../../src/findings/findings.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { entriesByCode } from '../../src/trial/byCode.ts';
import { contentHash } from '../../src/trial/content.ts';
import { corrections } from '../../src/trial/corrections.ts';
import { fold } from '../../src/trial/fold.ts';
import { readingLives } from '../../src/trial/lives.ts';
import { partEntries } from '../../src/trial/partEntries.ts';
import { rowName } from '../../src/trial/rowName.ts';
import { entry, onePiece, reading } from './entries.ts';

let acts = 0;
const act = (about: string, which: string, more: Record<string, string> = {}) => {
  acts += 1;
  return entry('withdrawal', { withdrawal: `w${acts}`, about, which, why: 'typed twice', ...more });
};
const again = (about: string, which: string, more: Record<string, string> = {}) =>
  act(about, which, { act: 'taken up again', ...more });

/** Two cables with a piece each, a tool and its check, a look each, a fitting, a judgement, an endurance row and a log. */
function everything(): Entry[] {
  const look = (evidence: string, cable: string) =>
    entry('evidence', { evidence, cable, look: 'scraped_strand', count: '3', seen: 'red through' });
  return [
    ...onePiece(),
    entry('cable', { cable: 'sedge', maker: 'Sedge', claimed_size: '2 AWG', claimed_metal: 'OFC' }),
    entry('specimen', { specimen: 's1', cable: 'sedge', cut_length: '300', kind: 'apart' }),
    entry('check', {
      check: 'k1',
      instrument: 'scale',
      against: 'check weight',
      known_value: '100',
      unit: 'g',
      read_value: '100.02',
    }),
    look('e1', 'quill'),
    look('e2', 'sedge'),
    entry('fitting', { fitting: 'lug', bore: '9', unit: 'mm', tried_with: 'quill', tried: 'goes in' }),
    entry('fitting', { fitting: 'lug', bore: '9', unit: 'mm', tried_with: 'sedge', tried: 'too loose' }),
    entry('judgement', { judgement: 'j1', left: 'q1', right: 's1', result: 'left' }),
    entry('endurance', {
      endurance: 'x1',
      specimen: 'q1',
      test: 'scrape',
      amount: '40',
      unit: 'strokes',
      outcome: 'failed',
    }),
    entry('current', { specimen: 'q1', time_s: '0', current_A: '50' }),
    reading('r1', 'conductor_mass', '91.2', 'g', { instrument: 'scale' }),
    reading('r2', 'conductor_length', '300', 'mm'),
    entry('reading', {
      reading: 'r3',
      specimen: 's1',
      quantity: 'conductor_mass',
      value: '90',
      unit: 'g',
      instrument: 'scale',
    }),
  ];
}

/** What of each table counts, by name. */
function standing(entries: readonly Entry[]) {
  const trial = fold(entries);
  return {
    cables: trial.cables.map(({ cable }) => cable),
    pieces: trial.specimens.map(({ specimen }) => specimen),
    tools: trial.instruments.map(({ instrument }) => instrument),
    checks: trial.checks.map(({ check }) => check),
    looks: trial.evidence.map(({ row }) => rowName('evidence', row)),
    tried: trial.fittings.map(({ triedWith }) => triedWith),
    judged: trial.judgements.map(({ judgement }) => judgement),
    endurance: trial.endurance.length,
    currents: trial.currents.length,
    counted: trial.readings.filter((r) => r.standing === 'counted').map((r) => r.reading),
  };
}

const ALL = standing(everything());

describe('what is put aside', () => {
  it.each<[string, Entry[], Partial<typeof ALL>]>([
    [
      'a cable takes along its pieces, looks, fittings and readings, and what was judged against them',
      [act('cable', 'quill')],
      {
        cables: ['sedge'],
        pieces: ['s1'],
        looks: ['e2'],
        tried: ['sedge'],
        judged: [],
        endurance: 0,
        currents: 0,
        counted: ['r3'],
      },
    ],
    [
      'a piece takes along what was read on it',
      [act('specimen', 'q1')],
      { pieces: ['s1'], judged: [], endurance: 0, currents: 0, counted: ['r3'] },
    ],
    [
      'a tool takes along its checks, not what was read with it',
      [act('instrument', 'scale')],
      { tools: [], checks: [] },
    ],
    ['a check', [act('check', 'k1')], { checks: [] }],
    ['a look', [act('evidence', 'e1')], { looks: ['e2'] }],
    ['a judgement', [act('judgement', 'j1')], { judged: [] }],
    ['an endurance row', [act('endurance', 'x1')], { endurance: 0 }],
    ['a fitting', [act('fitting', 'lug')], { tried: [] }],
    ['a fitting as tried with one cable', [act('fitting', 'lug', { tried_with: 'sedge' })], { tried: ['quill'] }],
    [
      'one cable in it taken up again',
      [act('fitting', 'lug'), again('fitting', 'lug', { tried_with: 'sedge' })],
      { tried: ['sedge'] },
    ],
    ['taken up again: as if nothing had been', [act('cable', 'quill'), again('cable', 'quill')], {}],
    ['put aside once more', [act('check', 'k1'), again('check', 'k1'), act('check', 'k1')], { checks: [] }],
    ['about something of another name: nothing', [act('cable', 'nobody')], {}],
  ])('%s', (_, said, wanted) => {
    expect(standing([...everything(), ...said])).toEqual({ ...ALL, ...wanted });
  });

  it('finds a row that was given no name by its mark', () => {
    const look = entry('evidence', { cable: 'quill', look: 'magnet', seen: 'pulls' });
    const entries = [...onePiece(), look];
    expect(fold([...entries, act('evidence', rowName('evidence', look.body))]).evidence).toEqual([]);
  });

  it('follows a piece to what a mix-up put right', () => {
    const swap = entry('retag', { retag: 'm', kind: 'swap', specimen: 'q1', becomes: 's1', why: 'tags' });
    expect(standing([...everything(), swap, act('specimen', 'q1')]).counted).toEqual(['r1', 'r2']);
  });

  it('leaves struck and replaced readings what they are, and says why the others stand aside', () => {
    const strike = entry('strike', { reading: 'r1', why: 'slipped' });
    const { readings } = fold([...everything(), strike, act('specimen', 'q1')]);
    expect(readings.map((r) => [r.reading, r.standing, r.why])).toEqual([
      ['r1', 'struck', 'slipped'],
      ['r2', 'aside', 'typed twice'],
      ['r3', 'counted', ''],
    ]);
  });

  it('keeps everything on record: rows as typed in their places, and another content than without the act', () => {
    const without = fold(everything());
    const aside = fold([...everything(), act('cable', 'quill')]);
    expect(aside.aside.map(({ kind, entry: id }) => [kind, id]).length).toBe(7);
    expect(aside.readings.length).toBe(without.readings.length);
    expect(contentHash(aside)).not.toBe(contentHash(without));
  });

  it('gives the findings that there would be without it', () => {
    const had = fold([...everything(), act('cable', 'sedge')]);
    const never = fold(
      everything().filter(
        ({ body }) =>
          ![body.cable, body.specimen, body.tried_with, body.right].some((name) => name === 'sedge' || name === 's1'),
      ),
    );
    const of = (trial: typeof had) => findingsOf(trial, { level: 0.95, draws: 0 }).cables;
    expect(of(had)).toEqual(of(never));
  });

  it('puts the trial away and takes it up again', () => {
    const put = act('trial', '');
    expect(fold([...everything(), put]).putAway?.why).toBe('typed twice');
    expect(fold([...everything(), put, again('trial', '')]).putAway).toBeNull();
  });

  it('says of a tool that is aside that a usual limit stands for it', () => {
    const { remarks } = fold([...everything(), act('instrument', 'scale')]);
    expect(remarks.filter(({ code }) => code === 'tool-aside').map(({ readings }) => readings)).toEqual([['r1', 'r3']]);
    expect(remarks.filter(({ code }) => code === 'not-yet-described')).toEqual([]);
  });

  it('makes no remark about things that are aside, and one about an act that says nothing known', () => {
    const note = entry('note', { note: 'n', about: 'cable', which: 'quill', text: 'odd' });
    expect(fold([...everything(), note, act('cable', 'quill')]).remarks).toEqual(fold(everything()).remarks);
    expect(fold([...everything(), act('house', 'x')]).remarks.map(({ code }) => code)).toContain('cannot-be-read');
  });

  it('is told among the corrections and in the life of each reading', () => {
    const entries = [
      ...everything(),
      act('specimen', 'q1'),
      again('specimen', 'q1'),
      act('evidence', 'e2'),
      act('judgement', 'j1'),
      act('endurance', 'x1'),
      act('endurance', 'x9'),
    ];
    const trial = fold(entries);
    expect(corrections(entries, trial).map(({ what, cable, text }) => [what, cable, text])).toEqual([
      ['put aside', 'quill', 'Piece q1 was put aside. Reason given: typed twice'],
      ['taken up again', 'quill', 'Piece q1 was taken up again. Reason given: typed twice'],
      ['put aside', 'sedge', 'Look e2 at cable sedge was put aside. Reason given: typed twice'],
      ['put aside', null, 'Judgement of q1 and s1 was put aside. Reason given: typed twice'],
      ['put aside', 'quill', 'Outcome of q1 in scrape, 40 strokes was put aside. Reason given: typed twice'],
      ['put aside', null, 'Endurance row x9 was put aside. Reason given: typed twice'],
    ]);
    expect(
      readingLives(entries, trial)
        .get('r1')!
        .events.map(({ what }) => what),
    ).toEqual(['said', 'put aside', 'taken up again']);
    expect(
      readingLives(entries, trial)
        .get('r3')!
        .events.map(({ what }) => what),
    ).toEqual(['said']);
  });

  it('goes with a sealed part as far as the part holds what it is about', () => {
    const said = [act('cable', 'quill'), act('evidence', 'e2'), act('judgement', 'j1'), act('trial', '')];
    const heldIn = (place: 'inside' | 'bend') =>
      partEntries([...everything(), ...said], { holds: null, places: [place] })
        .filter(({ kind }) => kind === 'withdrawal')
        .map(({ body }) => body.about);
    expect(heldIn('inside')).toEqual(['cable', 'evidence', 'trial']);
    expect(heldIn('bend')).toEqual(['cable', 'judgement', 'trial']);
  });

  it('is left out of a blind trial, with everything said before under the same name', () => {
    const twice = entry('cable', { cable: 'quill', maker: 'Quill', claimed_size: '4 AWG' });
    const blind = entry('blinding', { act: 'blind' });
    const entries = [...everything(), twice, act('cable', 'quill'), blind];
    const shown = fold(entriesByCode(entries, fold(entries)));
    expect([shown.cables.length, shown.specimens.length, shown.readings.length, shown.aside.length]).toEqual([
      1, 1, 1, 0,
    ]);
  });
});

describe('putting aside and taking up again', () => {
  const things = [
    ['cable', 'quill'],
    ['specimen', 's1'],
    ['instrument', 'scale'],
    ['check', 'k1'],
    ['evidence', 'e1'],
    ['judgement', 'j1'],
    ['endurance', 'x1'],
    ['fitting', 'lug'],
    ['trial', 'club'],
  ] as const;
  const someActs = fc.array(fc.tuple(fc.constantFrom(...things), fc.boolean()), { maxLength: 8 });

  it('means the same in every order of arrival, however often each arrives', () => {
    fc.assert(
      fc.property(someActs, fc.infiniteStream(fc.nat()), (said, luck) => {
        const entries = [...everything(), ...said.map(([[about, which], up]) => (up ? again : act)(about, which))];
        const draw = () => luck.next().value as number;
        const arrived = [...entries, ...entries.slice(draw() % entries.length)]
          .map((one) => ({ one, at: draw() }))
          .sort((a, b) => a.at - b.at)
          .map(({ one }) => one);
        expect(fold(arrived)).toEqual(fold(entries));
      }),
      { seed: 20261125, numRuns: 60 },
    );
  });

  it('loses no row: what counts and what stands aside make up all that was said', () => {
    fc.assert(
      fc.property(someActs, (said) => {
        const entries = [...everything(), ...said.map(([[about, which], up]) => (up ? again : act)(about, which))];
        const trial = fold(entries);
        const tables = [trial.cables, trial.fittings, trial.instruments, trial.checks, trial.specimens, trial.evidence];
        const more = [
          trial.readings,
          trial.judgements,
          trial.endurance,
          trial.currents,
          trial.withdrawals,
          trial.aside,
        ];
        const held = [...tables, ...more].flat().map(({ entry: id }) => id);
        const wanted = entries.filter(({ kind }) => kind !== 'trial').map(({ id }) => id);
        expect(held.sort()).toEqual(wanted.sort());
      }),
      { seed: 20261126, numRuns: 60 },
    );
  });
});
