import { describe, expect, it } from 'vitest';
import { benchList } from '../../src/findings/nextAct.ts';
import { planOf } from '../../src/findings/plan.ts';
import { OWNED_TOOLS } from '../../src/findings/starter/ownedTools.ts';
import { type StarterAnswers, starterEntries } from '../../src/findings/starter.ts';
import { checkEntry } from '../../src/journal/entryCheck.ts';
import { checkRow } from '../../src/journal/rowCheck.ts';
import { tableOfKind } from '../../src/journal/tables.ts';
import { fold } from '../../src/trial/fold.ts';

const NOW = Date.UTC(2026, 10, 1);

function saying() {
  let made = 0;
  return {
    trial: 'first',
    at: '2026-10-03T10:00:00.000Z',
    newId: () => `019a0000-0000-7000-8000-${(++made).toString(16).padStart(12, '0')}`,
  };
}

const ANSWERS: StarterAnswers = {
  title: 'Twelve volts, six cables',
  cables: 6,
  size: '1/0 AWG',
  metal: 'OFC',
  boughtLength: '10 ft',
  tools: ['Pocket scale', 'steel rule', 'four-wire meter', 'thermometer', 'divining rod'],
  control: { size: '10 AWG' },
  temperature: '20',
  methods: ['ohms', 'weigh', 'eye'],
  shortfall: 0.06,
};

describe('a starter trial', () => {
  const entries = starterEntries(ANSWERS, saying());
  const trial = fold(entries);

  it('is made of entries that every door lets in', () => {
    for (const entry of entries) {
      expect(checkEntry(entry), JSON.stringify(entry)).toMatchObject({ ok: true });
      expect(checkRow(tableOfKind(entry.kind)!, entry.body, { now: NOW }), JSON.stringify(entry.body)).toEqual([]);
    }
    expect(trial.remarks).toEqual([]);
  });

  it('has its cables, control, tools and settings', () => {
    expect(trial.cables.map((c) => c.role)).toEqual([...Array(6).fill('compared'), 'control']);
    expect(trial.instruments.map((i) => i.kind)).toEqual([
      'pocket scale',
      'steel rule',
      'four-wire meter',
      'thermometer',
    ]);
    expect(trial.instruments.every((i) => i.limit.assumed)).toBe(true);
    expect(trial.settings).toMatchObject({ methods: 'ohms, weigh, eye', shortfall: '0.06' });
  });

  it('has every piece that its plan wants, with codes, and nothing more to propose', () => {
    const plan = planOf(trial, { draws: 0 });
    const pieces = plan.cables.flatMap((c) => c.pieces);
    expect(pieces.every((p) => p.onRecord)).toBe(true);
    expect(new Set(trial.specimens.map((s) => s.code)).size).toBe(trial.specimens.length);
    expect(trial.specimens.every((s) => s.code !== '')).toBe(true);
  });

  it('has readings to take', () => {
    expect(benchList(trial).next!.item.quantity).toBe('resistance');
  });

  it('takes names of cables where they are known', () => {
    const named = fold(starterEntries({ ...ANSWERS, cables: ['Harrow', ' '], control: null }, saying()));
    expect(named.cables.map((c) => c.name)).toEqual(['Harrow', 'Cable 2']);
  });

  it('refuses no cable and too many', () => {
    expect(() => starterEntries({ ...ANSWERS, cables: 0 }, saying())).toThrow(RangeError);
    expect(() => starterEntries({ ...ANSWERS, cables: 101 }, saying())).toThrow(RangeError);
  });
});

it('offers only tools whose rows can be read', () => {
  const tools = OWNED_TOOLS.map((t) => t.tool);
  const trial = fold(starterEntries({ ...ANSWERS, tools }, saying()));
  expect(trial.instruments).toHaveLength(OWNED_TOOLS.length);
});

describe('limits as the boxes print them', () => {
  it('are taken for the tools that have one, and the usual ones for the rest', () => {
    const limits = { 'pocket scale': '±0.05 g', 'divining rod': '1 mm' };
    const { instruments } = fold(starterEntries({ ...ANSWERS, limits }, saying()));
    const limitOf = (name: string) => instruments.find((i) => i.instrument === name)!.limit;
    expect(limitOf('pocket scale')).toMatchObject({ absolute: 5e-5, fraction: 0, assumed: false });
    expect(limitOf('steel rule')).toMatchObject({ assumed: true });
  });
});
