/** Parts of a trial: sealed, corrected afterwards, exported, computed again. */
import { describe, expect, it } from 'vitest';
import { verifySealed } from '../../../src/edge/cli/verifySealed.ts';
import { partFindings } from '../../../src/findings/partFindings.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { writePackage } from '../../../src/report/package/writePackage.ts';
import { changedSince, correctionsAfter } from '../../../src/report/publish/changedSince.ts';
import { findingsHash, sameAs, sealedPackage, sealRow, unseal } from '../../../src/report/publish/seal.ts';
import { contentHash } from '../../../src/trial/content.ts';
import { corrections } from '../../../src/trial/corrections.ts';
import { fold } from '../../../src/trial/fold.ts';
import { heldAmong, holdsCells, holdsIn } from '../../../src/trial/heldRows.ts';
import { partEntries } from '../../../src/trial/partEntries.ts';
import { Bench } from '../../findings/bench.ts';
import { SEAL_ASKED } from '../../support/sealAsked.ts';

const NOW = '2026-12-01T00:00:00Z';
const ASKED = { ...SEAL_ASKED, title: 'What is inside' };

function bench(): Bench {
  return new Bench()
    .carefulTools()
    .cable('x', '2 AWG', 'OFC')
    .piece('p', 'x')
    .everything('p', 33.9)
    .read('p', 'overhang', '300', 'mm', { set: 'd', instrument: 'rule' })
    .read('p', 'tip_drop', '120', 'mm', { set: 'd', position: 'up', instrument: 'rule' })
    .say('setting', { setting: 'standing_weights', value: 'copper 1' });
}
const sealedBench = (asked: Partial<Parameters<typeof sealRow>[1]> = {}) => {
  const b = bench();
  return b.say('seal', sealRow(b.entries, { ...ASKED, ...asked }));
};
const partOf = (b: Bench, i = 0) => fold(b.entries).parts[i]!;
const bytesOf = (files: ReadonlyMap<string, string>) =>
  new Map([...files].map(([name, text]) => [name, new TextEncoder().encode(text)]));

describe('a part', () => {
  it('holds nothing of other places, in rows or findings', () => {
    const b = bench();
    const { trial, findings } = partFindings(b.entries, { places: ['inside'], holds: null, level: 0.95, draws: 0 });
    expect(trial.readings.some(({ quantity }) => quantity === 'overhang' || quantity === 'tip_drop')).toBe(false);
    expect(trial.settings).toEqual({});
    expect(findings.flex).toBeNull();
    expect(findings.cables[0]!.conductor_area).not.toBeNull();
    const files = sealedPackage({ trial, findings });
    expect([...files.values()].join('\n')).not.toMatch(/overhang|tip_drop|standing_weights/);
    const bend = partEntries(b.entries, { places: ['bend'], holds: null });
    expect(bend.some(({ body }) => body.quantity === 'resistance')).toBe(false);
    expect(bend.some(({ body }) => body.quantity === 'overhang')).toBe(true);
  });

  it('is refused while names are hidden, without a place, and before anything was said', () => {
    const blind = bench().say('blinding', { act: 'blind' });
    expect(() => sealRow(blind.entries, ASKED)).toThrow(/names are hidden/);
    expect(() => sealRow(bench().entries, { ...ASKED, places: [] })).toThrow(/needs a place/);
    expect(() => sealRow([], ASKED)).toThrow(/nothing to seal/);
  });
});

describe('a sealed part', () => {
  it('moves no digit of the trial', () => {
    expect(contentHash(fold(sealedBench().entries))).toBe(contentHash(fold(bench().entries)));
    expect(sealedBench().findings().engine.seed).toBe(bench().findings().engine.seed);
  });

  it('gives the same digits after corrections, strikes, mix-ups and new readings', () => {
    const b = sealedBench();
    const before = unseal(b.entries, partOf(b))!;
    expect(before.sameFindings).toBe(true);
    const mass = b.entries.find(({ body }) => body.quantity === 'conductor_mass')!.body;
    b.say('reading', { ...mass, reading: 'again', value: '80.00', replaces: mass.reading!, why: 'misread' });
    b.say('strike', { reading: 'r3', why: 'clips loose' });
    b.cable('y', '2 AWG').piece('q', 'y').everything('q', 30);
    b.say('cable', { cable: 'x', maker: 'x', claimed_size: '4 AWG', claimed_metal: 'OFC' });
    const after = unseal(b.entries, partOf(b))!;
    expect(after.sameFindings).toBe(true);
    expect(after.findings).toEqual(before.findings);
  });

  it('stands although something said earlier arrives later, from a phone that was out of reach', () => {
    const b = sealedBench();
    const late = b.entries.length;
    b.read('p', 'conductor_mass', '80.00', 'g', { instrument: 'scale' });
    b.say('strike', { reading: 'r1', why: 'told at once, sent today' });
    // By the clock of that phone both were said before the seal.
    const entries = b.entries.map((e, i) =>
      i < late ? e : { ...e, id: `00000000-0000-7000-7fff-00000000000${i - late}` },
    );
    expect(entries[late]!.id < partOf(b).upTo).toBe(true);
    expect(contentHash(fold(entries))).not.toBe(contentHash(fold(b.entries.slice(0, late))));
    expect(unseal(entries, partOf(b))!.sameFindings).toBe(true);
    const after = correctionsAfter(corrections(entries, fold(entries)), partOf(b), entries);
    expect(after.map(({ what }) => what)).toEqual(['struck']);
  });

  it('keeps its marks over as many cells as they take', () => {
    const many = Array.from({ length: 4500 }, (_, i) => ({ kind: 'reading', body: { reading: `r${i}` } }) as never);
    const cells = holdsCells(many);
    expect(Object.keys(cells)).toEqual(['holds', 'holds_2', 'holds_3']);
    for (const text of Object.values(cells)) expect(text.length).toBeLessThanOrEqual(10_000);
    const holds = holdsIn(cells)!;
    expect([...holds.values()].reduce((a, n) => a + n, 0)).toBe(4500);
    expect(heldAmong([...many, { kind: 'reading', body: { reading: 'other' } } as never], holds)).toHaveLength(4500);
    expect(holdsIn({ part: '1' })).toBeNull();
  });

  it('sealed again under its name stays as it was, with a remark; title and hiding may change', () => {
    const b = sealedBench();
    const first = partOf(b);
    b.read('p', 'conductor_mass', '80.00', 'g', { instrument: 'scale' });
    b.say('seal', sealRow(b.entries, { ...ASKED, title: 'Inside', hidden: true }));
    const trial = fold(b.entries);
    expect(trial.parts).toHaveLength(1);
    expect(trial.parts[0]).toMatchObject({ content: first.content, upTo: first.upTo, title: 'Inside', hidden: true });
    expect(trial.remarks.map(({ code }) => code)).toContain('part-sealed-again');
  });

  it('several parts over weeks each keep their own', () => {
    const b = sealedBench();
    b.read('p', 'tip_drop', '124', 'mm', { set: 'd', position: 'down', instrument: 'rule' });
    b.say('seal', sealRow(b.entries, { ...ASKED, part: '2', places: ['bend', 'standing'] }));
    b.read('p', 'tip_drop', '90', 'mm', { set: 'd', position: 'down', instrument: 'rule' });
    for (const part of fold(b.entries).parts) {
      const again = unseal(b.entries, part)!;
      expect([part.part, again.sameFindings]).toEqual([part.part, true]);
    }
  });
});

describe('a seal under another name', () => {
  it('is told from one that holds something new', () => {
    const b = sealedBench();
    const { parts } = fold(b.entries);
    expect(sameAs(parts, sealRow(b.entries, { ...ASKED, part: '2' }))?.part).toBe('1');
    expect(sameAs(parts, sealRow(b.entries, { ...ASKED, part: '2', places: ['bend'] }))).toBeNull();
  });
});

describe('a part without a name', () => {
  it.each(['', ' ', '../../x/<b>', 'x'.repeat(200)])('%j is not sealed', (part) => {
    expect(() => sealRow(bench().entries, { ...ASKED, part })).toThrow(/expected a name of 1 to 40 characters/);
  });

  it('that an earlier version let in leaves the trial readable: shown, written without it, read with a note', () => {
    const b = sealedBench();
    const row = sealRow(b.entries, { ...ASKED, part: '2' });
    b.say('seal', { ...row, part: '' });
    b.say('seal', { ...row, part: '../../x/<b>' });
    const trial = fold(b.entries);
    expect(trial.parts.map(({ part }) => part)).toEqual(['1', '../../x/<b>']);
    expect(trial.remarks.map(({ code }) => code)).toContain('part-without-name');
    const files = writePackage(trial);
    const read = readPackage(bytesOf(files), { now: NOW });
    expect([read.refusals, read.notes]).toEqual([[], []]);
    expect(fold(read.entries).parts.map(({ part }) => part)).toEqual(['1', '../../x/<b>']);
    const nameless = files.get('parts.csv')!.replace('../../x/<b>', '');
    const older = readPackage(bytesOf(new Map(files).set('parts.csv', nameless)), { now: NOW });
    expect(older.refusals).toEqual([]);
    expect(older.notes).toEqual(['parts.csv, line 3: a part was sealed without a name, and is left aside.']);
    expect(fold(older.entries).parts.map(({ part }) => part)).toEqual(['1']);
  });
});

describe('a sealed part in a package', () => {
  const b = sealedBench();
  const part = partOf(b);
  const files = sealedPackage(unseal(b.entries, part)!);
  const verify = (spoil: (files: Map<string, string>) => void = () => {}) => {
    const copy = new Map(files);
    spoil(copy);
    return verifySealed(part, bytesOf(copy), 1e-9, NOW);
  };

  it('is computed again from its own folder: digits and both hashes', () => {
    expect(verify().outcome).toBe('same');
    expect(findingsHash(unseal(b.entries, part)!)).toBe(part.findings);
  });

  it('a row that was changed, a figure that was changed, a file that is missing are each found', () => {
    const changed = verify((f) => f.set('readings.csv', f.get('readings.csv')!.replace(/,665,/, ',600,')));
    expect(changed).toMatchObject({ outcome: 'differs', text: expect.stringContaining('not those that were sealed') });
    const figure = verify((f) => f.set('findings.json', f.get('findings.json')!.replace(/"value": 3/, '"value": 4')));
    expect(figure.outcome).toBe('differs');
    expect(figure.text).toMatch(/differ first at x, /);
    const words = verify((f) => f.set('findings.json', f.get('findings.json')!.replace('Holds', 'Has')));
    expect(words.outcome).toBe('differs');
    expect(verify((f) => f.delete('findings.json')).outcome).toBe('differs');
    expect(verifySealed(part, undefined, 1e-9, NOW).outcome).toBe('not here');
  });

  it('comes back through import, whatever was added; not once a row that it held was described anew', () => {
    const read = readPackage(bytesOf(files), { now: NOW });
    expect(unseal(read.entries, part)!.sameFindings).toBe(true);
    const said = { reading: 'new', specimen: 'p', quantity: 'conductor_mass', value: '80.00', unit: 'g' };
    const later = (entries: readonly Entry[]) => entries.slice(1).map((e) => ({ ...e, trial: read.trial }));
    const more = [...read.entries, ...later(new Bench().say('reading', said).entries)];
    expect(unseal(more, part)!.sameFindings).toBe(true);
    const anew = read.entries.map((e) =>
      e.kind === 'cable' ? { ...e, body: { ...e.body, claimed_size: '4 AWG' } } : e,
    );
    expect(unseal(anew, part)).toBeNull();
  });
});

describe('changed since', () => {
  it('lists figures that read otherwise today, outcomes that moved, and the dated corrections', () => {
    const b = sealedBench();
    const part = partOf(b);
    const sealed = unseal(b.entries, part)!.findings;
    const now = () => partFindings(b.entries, { places: part.places, holds: null, level: 0.95, draws: 0 }).findings;
    const since = () =>
      changedSince(sealed, now(), correctionsAfter(corrections(b.entries, fold(b.entries)), part, b.entries));
    expect(since()).toEqual({ changes: [], corrections: [] });
    b.say('cable', { cable: 'x', maker: 'x', claimed_size: '1/0 AWG', claimed_metal: 'OFC' });
    const { changes, corrections: dated } = since();
    expect(dated).toHaveLength(1);
    expect(dated[0]!.text).toMatch(/size.* from "2 AWG" to "1\/0 AWG"/);
    const texts = changes.map(({ text }) => text);
    expect(texts.some((t) => /^copper, of what the label claims: .* then, .* now$/.test(t))).toBe(true);
    expect(texts).toContain('claim “copper held”: meets then, falls short now');
    expect(changes.every(({ at }) => at === dated[0]!.at)).toBe(true);
    expect(
      texts.some((t) => t.startsWith('metal area')),
      'the metal is what it was',
    ).toBe(false);
  });
});
