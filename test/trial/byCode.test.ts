import { describe, expect, it } from 'vitest';
import { findingsOf } from '../../src/findings/findings.ts';
import { entriesByCode } from '../../src/trial/byCode.ts';
import { fold } from '../../src/trial/fold.ts';
import { plannedTrial, READS, said } from '../browser/support/benchTrial.ts';

const rows = plannedTrial('t', ['KR', 'VN', '']).map((entry) =>
  entry.kind === 'cable' ? { ...entry, body: { ...entry.body, price: '19', note: 'from Maker', lot: 'L7' } } : entry,
);
const readings = ['cable-1', 'cable-2', 'cable-3'].flatMap((cable, c) =>
  Object.entries(READS).map(([quantity, [value, unit]], q) => {
    const specimen = `${cable}-${quantity === 'resistance' ? 'whole' : 'apart'}`;
    return said('t', 'reading', { reading: `${cable}${q}`, specimen, quantity, value, unit }, 500 + 10 * c + q);
  }),
);
const note = said('t', 'note', { note: 'n1', about: 'cable', which: 'cable-1', text: 'Maker 1 prints badly' }, 600);
const retag = said(
  't',
  'retag',
  { retag: 'm1', kind: 'swap', specimen: 'cable-1-whole', becomes: 'cable-2-whole', why: 'tags' },
  601,
);
const entries = [...rows, ...readings, note, retag];
const coded = entriesByCode(entries, fold(entries));

describe('a blind trial by code', () => {
  it('says no name of a cable or a piece, no maker, no price, no note', () => {
    const said = JSON.stringify(coded.map(({ kind, body }) => (kind === 'reading' ? { ...body, reading: '' } : body)));
    expect(said).not.toMatch(/Maker|cable-\d|L7|price|"note"/);
    expect(fold(coded).cables.map(({ cable, name }) => [cable, name])).toEqual([
      ['KR', 'KR'],
      ['VN', 'VN'],
      ['cable 3', 'cable 3'],
    ]);
  });

  it('means the same for every figure', () => {
    const [open, blind] = [entries, coded].map((each) => findingsOf(fold(each), { level: 0.95, draws: 0 }).cables);
    expect(blind!.map(({ conductor_area: area }) => area?.value)).toEqual(
      open!.map(({ conductor_area: area }) => area?.value),
    );
    expect(blind!.map(({ claims }) => claims.map(({ outcome }) => outcome))).toEqual(
      open!.map(({ claims }) => claims.map(({ outcome }) => outcome)),
    );
    expect(blind!.every(({ conductor_area: area }) => area !== null)).toBe(true);
  });

  it('keeps the pieces of one code apart', () => {
    const twins = [
      ...rows,
      said('t', 'specimen', { specimen: 'cable-1-again', cable: 'cable-1', code: 'KR', kind: 'apart' }, 700),
    ];
    const names = fold(entriesByCode(twins, fold(twins))).specimens.map(({ specimen }) => specimen);
    expect(names).toContain('KR apart 2');
    expect(new Set(names).size).toBe(names.length);
  });
});
