import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../src/journal/entry.ts';
import { mergeEntries } from '../../../src/journal/merge.ts';
import { QUANTITY_NAMES } from '../../../src/journal/quantities.ts';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { refusalText } from '../../../src/report/package/refusal.ts';
import { writePackage } from '../../../src/report/package/writePackage.ts';
import { contentHash, trialContent } from '../../../src/trial/content.ts';
import { fold } from '../../../src/trial/fold.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { entry, onePiece, reading } from '../../trial/entries.ts';
import { bytes, GOOD, NOW, read } from './files.ts';

const SEED = 20261125;

function through(trial: Trial): { trial: Trial; entries: Entry[] } {
  const result = readPackage(bytes(Object.fromEntries(writePackage(trial))), { now: NOW });
  expect(result.refusals.map(refusalText)).toEqual([]);
  return { trial: fold(result.entries), entries: result.entries };
}

/** Rows without the ids of their entries, which export does not carry. */
const withoutIds = (trial: Trial): unknown =>
  JSON.parse(JSON.stringify(trial, (key, value) => (key === 'entry' ? undefined : sorted(value))));

function sorted(value: unknown): unknown {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}

const EVERYTHING: Entry[] = [
  ...onePiece(),
  entry('cable', {
    cable: 'salt',
    claimed_size: '2 AWG',
    maker: '=HYPERLINK("x")',
    lot: '24-07',
    shared_name: 'house wire',
    shelf: 'B, "top"\nleft',
  }),
  entry('specimen', { specimen: 's1', cable: 'salt', cut_from: 's0' }),
  entry('specimen', { specimen: 's0', cable: 'salt', kind: 'whole' }),
  reading('r1', 'conductor_mass', '93.1', 'g', { instrument: 'scale', at: '2026-10-03 11:00' }),
  reading('r2', 'conductor_mass', '39.1', 'g', { replaces: 'r1', why: 'digits swapped', at: '2026-10-03 09:00' }),
  reading('r3', 'conductor_mass', ' 1 3/8 ', 'oz', { footage: 'tape 2', at: '2026-10-03 09:00' }),
  reading('r4', 'hardness', '62', 'Shore A'),
  entry('strike', { reading: 'r3', why: 'wrong piece', by: 'Ann' }),
  entry('evidence', { cable: 'quill', look: 'scraped_strand', count: '3 of 10', seen: 'white core' }),
  entry('evidence', { cable: 'quill', look: 'scraped_strand', count: '3 of 10', seen: 'white core' }),
  entry('fitting', { fitting: 'lug', bore: '9', unit: 'mm', tried_with: 'quill', tried: 'goes in' }),
  entry('fitting', { fitting: 'lug', bore: '9', unit: 'mm', tried_with: 'salt', tried: 'will not go' }),
  entry('judgement', { judgement: 'j1', left: 'q1', right: 's1', result: 'same' }),
  entry('endurance', { specimen: 'q1', test: 'scrape', amount: '12', unit: 'strokes', outcome: 'failed' }),
  entry('current', { specimen: 'q1', time_s: '0', current_A: '100' }),
  entry('judgement', { judgement: 'j2', left: 's1', right: 'q1', result: 'left', at: '2026-10-03 08:00' }),
  entry('check', {
    check: 'k1',
    instrument: 'scale',
    against: 'zero',
    unit: 'g',
    read_value: '-0.02',
    at: '2026-10-03 12:00',
  }),
  entry('check', { check: 'k2', instrument: 'scale', known_value: '100', unit: 'g', read_value: '100.01', by: 'Ann' }),
  entry('retag', {
    retag: 't1',
    kind: 'swap',
    specimen: 'q1',
    becomes: 's1',
    from: '2026-10-03 10:00',
    why: 'mixed up',
  }),
  entry('retag', {
    retag: 't2',
    kind: 'tag',
    specimen: 's1',
    becomes: 's0',
    until: '2026-10-02',
    why: 'old tag',
    at: '2026-10-03 07:00',
  }),
  entry('note', {
    note: 'n1',
    about: 'reading',
    which: 'r2',
    photo: 'ab'.repeat(32),
    shot: 'scale display',
    at: '2026-10-03 09:01',
  }),
  entry('note', { note: 'n3', about: 'specimen', which: 'q1', shot: 'droop', photo: 'droop.jpg' }),
  entry('note', { note: 'n4', about: 'reading', which: 'r1', answers: 'far-off', text: 'Asked and kept as it is.' }),
  entry('note', { note: 'n2', text: 'rain,\n"all" day', footage: 'card 1', timecode: '1:02:31' }),
  entry('setting', { setting: 'repeats', value: '3' }),
  entry('setting', { setting: 'methods', value: 'ohms, weigh' }),
  entry('setting', { setting: 'repeats', value: '5' }),
  entry('blinding', { act: 'blind', at: '2026-10-03', how: 'sleeve' }),
  entry('blinding', { act: 'reveal', at: '2026-10-05', by: 'Ann' }),
  entry('blinding', { act: 'blind', at: '2026-10-04' }),
];

describe('export, then import', () => {
  const before = fold(EVERYTHING);
  const after = through(before);

  it('keeps the content, with struck and replaced readings, unknown columns and awkward cells', () => {
    expect(trialContent(after.trial)).toBe(trialContent(before));
    expect(contentHash(after.trial)).toBe(contentHash(before));
  });

  it('keeps all that was computed from it, order included', () => {
    expect(withoutIds(after.trial)).toEqual(withoutIds({ ...before, ...trimmedRows(before) }));
  });

  it('gives the same entries every time, ids included', () => {
    expect(through(before).entries).toEqual(after.entries);
    expect(mergeEntries(after.entries, through(after.trial).entries)).toHaveLength(after.entries.length);
  });
});

/** Cells lose the blanks around them on the way. */
function trimmedRows(trial: Trial): Partial<Trial> {
  const trim = <T extends { row: Readonly<Record<string, string>> }>(one: T): T => ({
    ...one,
    row: Object.fromEntries(Object.entries(one.row).map(([name, cell]) => [name, cell.trim()])),
  });
  return { readings: trial.readings.map(trim), cables: trial.cables.map(trim) };
}

/** Cells as hostile as people make them: separators, quotes, line breaks, other scripts; but filled, and plain text. */
const cellText = fc
  .oneof(
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 20 }),
    fc.string({
      unit: fc.constantFrom(',', ';', '"', '\n', '\r', '\t', ' ', '=', "'", 'a', 'é', '\u00a0', '\uFEFF', '<'),
    }),
  )
  .filter((text) => text.trim() !== '' && !text.includes('\0'));
const name = fc.string({ unit: fc.constantFrom('a', 'b', '1', '-', 'é', ' ', ',', '"'), minLength: 1, maxLength: 6 });
const names = fc
  .uniqueArray(name, { minLength: 1, maxLength: 4, selector: (text) => text.trim() })
  .map((all) => all.filter((text) => text.trim() !== ''))
  .filter((all) => all.length > 0);
const moment = fc
  .integer({ min: 0, max: 100 })
  .map((minute) => `2026-10-03T10:${String(minute % 60).padStart(2, '0')}Z`);
const plainQuantity = fc.constantFrom(...QUANTITY_NAMES.filter((one) => one.endsWith('_mass')));

const journal = fc
  .record({
    cables: names,
    pieces: names,
    ids: fc.uniqueArray(name, { maxLength: 6, selector: (text) => text.trim() }),
  })
  .chain(({ cables, pieces, ids }) =>
    fc.record({
      cables: fc.tuple(
        ...cables.map((cable) =>
          fc.record({ cable: fc.constant(cable), claimed_size: cellText, note: cellText, 'Ö;x': cellText }),
        ),
      ),
      pieces: fc.tuple(
        ...pieces.map((specimen) => fc.record({ specimen: fc.constant(specimen), cable: fc.constantFrom(...cables) })),
      ),
      readings: fc.tuple(
        ...ids
          .filter((id) => id.trim() !== '')
          .map((id) =>
            fc.record(
              {
                reading: fc.constant(id),
                specimen: fc.constantFrom(...pieces),
                quantity: plainQuantity,
                value: fc.integer({ min: 1, max: 99_999 }).map((hundredths) => (hundredths / 100).toFixed(2)),
                unit: fc.constantFrom('g', 'oz', 'kg'),
                at: moment,
                note: cellText,
                replaces: fc.constantFrom(...ids.filter((one) => one.trim() !== '')),
                why: cellText,
              },
              { requiredKeys: ['reading', 'specimen', 'quantity', 'value', 'unit'] },
            ),
          ),
      ),
      struck: fc.subarray(ids.filter((id) => id.trim() !== '')),
      why: cellText,
    }),
  )
  .map(({ cables, pieces, readings, struck, why }) => [
    ...cables.map((row) => entry('cable', row)),
    ...pieces.map((row) => entry('specimen', row)),
    ...readings.map((row) => entry('reading', row as Record<string, string>)),
    ...struck.map((id) => entry('strike', { reading: id, why })),
  ]);

describe('export, then import, for all journals', () => {
  it('keeps the content and the order', () => {
    fc.assert(
      fc.property(journal, (entries) => {
        const before = fold(entries);
        const after = through(before).trial;
        expect(trialContent(after)).toBe(trialContent(before));
        const order = (trial: Trial) => trial.readings.map((one) => [one.reading, one.value, one.standing]);
        expect(order(after)).toEqual(order(before));
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});

describe('import onto a shelf that has the trial already', () => {
  const shelf = read(GOOD).entries;

  it('says nothing twice', () => {
    expect(read(GOOD, { shelf }).entries).toEqual([]);
    const fromThePage = fold(EVERYTHING);
    const files = Object.fromEntries(writePackage(fromThePage));
    expect(readPackage(bytes(files), { now: NOW, shelf: EVERYTHING }).entries.map(({ body }) => body)).toEqual([]);
  });

  it('lets an edited row correct the earlier one, and only that', () => {
    const edited = { ...GOOD, 'readings.csv': GOOD['readings.csv'].replace('93.10', '94.10') };
    const news = read(edited, { shelf }).entries;
    expect(news.map(({ body }) => [body.reading, body.value])).toEqual([['r1', '94.10']]);
    expect(shelf.every((one) => one.id < news[0]!.id)).toBe(true);
    const trial = fold([...shelf, ...news]);
    expect(trial.readings.map((one) => one.row.value)).toEqual(['94.10', '3.28']);
  });

  it('does not undo a correction when an older package comes again', () => {
    const correction = entry('cable', { cable: 'quill', claimed_size: '4 AWG' });
    const corrected = [...shelf, correction];
    expect(read(GOOD, { shelf: corrected }).entries).toEqual([]);
  });

  it('may name what only the shelf describes', () => {
    const more = { 'readings.csv': 'reading,specimen,quantity,value,unit\nr9,q1,conductor_mass,93.2,g\n' };
    const reading = read(more, { shelf });
    expect([reading.trial, reading.refusals]).toEqual(['club', []]);
    expect(fold([...shelf, ...reading.entries]).readings.map((one) => one.reading)).toEqual(['r9', 'r1', 'r2']);
  });
});

describe('the written package', () => {
  const files = writePackage(fold(EVERYTHING));

  it('has a file for each table that has rows, and its description', () => {
    expect([...files.keys()]).toEqual([
      'trial.csv',
      'cables.csv',
      'fittings.csv',
      'instruments.csv',
      'checks.csv',
      'specimens.csv',
      'evidence.csv',
      'readings.csv',
      'struck.csv',
      'retags.csv',
      'judgements.csv',
      'endurance.csv',
      'currents.csv',
      'notes.csv',
      'plan.csv',
      'blinding.csv',
      'datapackage.json',
    ]);
    expect(files.get('struck.csv')).toBe('reading,why,by\nr3,wrong piece,Ann\n');
  });

  it('holds the plan as it stands, and every act of blinding in its turn', () => {
    expect(files.get('plan.csv')).toBe('setting,value\nrepeats,5\nmethods,"ohms, weigh"\n');
    expect(files.get('blinding.csv')).toBe(
      'act,at,by,how\nblind,2026-10-03,,sleeve\nblind,2026-10-04,,\nreveal,2026-10-05,Ann,\n',
    );
  });

  it('leaves cells that look like formulas as they were typed', () => {
    expect(files.get('cables.csv')).toContain('"=HYPERLINK(""x"")"');
  });

  it('describes its tables as the tabular data package standard asks', () => {
    const description = JSON.parse(files.get('datapackage.json')!);
    expect(description.profile).toBe('tabular-data-package');
    expect(description.name).toMatch(/^[a-z0-9._-]+$/);
    for (const resource of description.resources) {
      expect(resource.profile).toBe('tabular-data-resource');
      expect(resource.name).toMatch(/^[a-z0-9._-]+$/);
      const [header] = files.get(resource.path)!.split('\n');
      expect(resource.schema.fields.map((field: { name: string }) => field.name).join(',')).toBe(header);
    }
    const readings = description.resources.find((one: { name: string }) => one.name === 'readings');
    expect(readings.schema.primaryKey).toEqual(['reading']);
    expect(readings.schema.foreignKeys).toContainEqual({
      fields: 'specimen',
      reference: { resource: 'specimens', fields: 'specimen' },
    });
    expect(readings.schema.foreignKeys).toContainEqual({
      fields: 'replaces',
      reference: { resource: '', fields: 'reading' },
    });
    const types = Object.fromEntries(
      readings.schema.fields.map((field: { name: string; type: string }) => [field.name, field.type]),
    );
    expect(types.value).toBe('string'); // one value is typed as 1 3/8
  });
});
