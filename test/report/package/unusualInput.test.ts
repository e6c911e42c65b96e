import { describe, expect, it } from 'vitest';
import { fold } from '../../../src/trial/fold.ts';
import { expectClose } from '../../tolerance.ts';
import { GOOD, read, sentences } from './files.ts';

const READINGS = 'reading,specimen,quantity,value,unit\n';
const latin1 = (text: string) => Uint8Array.from(text, (character) => character.charCodeAt(0));

describe('input that is unusual but right', () => {
  const wanted = fold(read(GOOD).entries);
  const massesOf = (files: Record<string, string | Uint8Array>) => {
    const reading = read(files);
    expect(sentences(reading)).toEqual([]);
    return { masses: fold(reading.entries).readings.map(({ value }) => value), notes: reading.notes };
  };

  it('reads the plain package without a word', () => {
    const reading = read(GOOD);
    expect([reading.trial, reading.refusals, reading.notes]).toEqual(['club', [], []]);
    expect(reading.entries).toHaveLength(8);
    expectClose(wanted.readings[0]!.value, 0.0931, { relative: 1e-12 });
    expectClose(wanted.readings[1]!.value, 3.28 * 0.028349523125, { relative: 1e-12 });
  });

  it.each([
    ['a byte-order mark', (text: string) => `\uFEFF${text}`],
    ['CRLF', (text: string) => text.replaceAll('\n', '\r\n')],
    ['CR alone', (text: string) => text.replaceAll('\n', '\r')],
    ['blank rows', (text: string) => text.replaceAll('\n', '\n\n,,\n')],
    ['semicolons', (text: string) => text.replaceAll(',', ';')],
    ['tabs', (text: string) => text.replaceAll(',', '\t')],
    ['a line that names the separator', (text: string) => `sep=;\n${text.replaceAll(',', ';')}`],
    ['quoted cells', (text: string) => text.replace(/[^,\n]+/g, '"$&"')],
    [
      'headers in capitals and with blanks',
      (text: string) => text.replace(/^.*/, (line) => line.toUpperCase().replaceAll('_', ' ')),
    ],
    ['blanks round cells', (text: string) => text.replaceAll(',', ' , ')],
  ])('reads %s', (_, change) => {
    const changed = Object.fromEntries(Object.entries(GOOD).map(([file, text]) => [file, change(text)]));
    const reading = read(changed);
    expect(sentences(reading)).toEqual([]);
    expect(fold(reading.entries)).toEqual(wanted);
  });

  it('reads UTF-16 as some spreadsheets write it', () => {
    const text = GOOD['cables.csv'];
    const utf16 = new Uint8Array(2 + text.length * 2);
    utf16.set([0xff, 0xfe]);
    for (let i = 0; i < text.length; i++) utf16[2 + i * 2] = text.charCodeAt(i);
    const reading = read({ ...GOOD, 'cables.csv': utf16 });
    expect(fold(reading.entries)).toEqual(wanted);
    expect(reading.notes).toEqual(['cables.csv was read as UTF-16.']);
  });

  it('reads decimal commas between semicolons, where 1,064 is a little more than one', () => {
    const header = `${READINGS.trim().replaceAll(',', ';')}\n`;
    const { masses, notes } = massesOf({
      ...GOOD,
      'readings.csv': `${header}r1;q1;conductor_mass;93,10;g\nr2;s1;conductor_mass;1,064;kg\nr3;s1;strand_count;1,064;\n`,
    });
    expectClose(masses[0]!, 0.0931, { relative: 1e-12 });
    expectClose(masses[1]!, 1.064, { relative: 1e-12 });
    expectClose(masses[2]!, 1064, { relative: 1e-12 });
    expect(notes).toEqual([
      'readings.csv: separated by semicolons, so 1,234 was read as 1.234 where a number may have decimals.',
    ]);
  });

  it('reads decimal commas in quotation marks', () => {
    const { masses } = massesOf({ ...GOOD, 'readings.csv': `${READINGS}r1,q1,conductor_mass,"93,1",g\n` });
    expectClose(masses[0]!, 0.0931, { relative: 1e-12 });
  });

  it('reads Latin-1 and says so', () => {
    const cables = latin1('cable,claimed_size,maker\nquill,2 AWG,K\u00e4se & S\u00f6hne\nsaltmarsh,2 AWG,\n');
    const reading = read({ ...GOOD, 'cables.csv': cables });
    expect(fold(reading.entries).cables[0]!.name).toBe('Käse & Söhne');
    expect(reading.notes).toEqual([
      'cables.csv is not UTF-8 and was read as Latin-1 (Windows-1252); check names with accents.',
    ]);
  });

  it('keeps columns that it does not know, and says so', () => {
    const reading = read({ ...GOOD, 'cables.csv': 'cable,claimed_size,shelf\nquill,2 AWG,B\nsaltmarsh,2 AWG,\n' });
    expect(reading.notes).toEqual(['cables.csv: the column is kept but not used: shelf.']);
    expect(fold(reading.entries).cables[0]!.row).toEqual({ cable: 'quill', claimed_size: '2 AWG', shelf: 'B' });
  });

  it('takes the folder’s name where trial.csv is missing', () => {
    const { 'trial.csv': _, ...without } = GOOD;
    expect(read(without, { trial: 'garage' }).trial).toBe('garage');
    expect(read(without).trial).toBe('trial');
  });

  it('takes a folder within which everything lies off, and leaves other files aside', () => {
    const nested = Object.fromEntries(Object.entries(GOOD).map(([file, text]) => [`Club/${file.toUpperCase()}`, text]));
    const reading = read({ ...nested, 'Club/photos/a.jpg': 'x', '__MACOSX/._b': 'y', 'Club/README.md': 'z' });
    expect(fold(reading.entries)).toEqual(wanted);
    expect(reading.notes).toEqual(['photos/a.jpg is no table of the package and was left aside.']);
  });

  it('lets cables alone in, and says that nothing was measured', () => {
    const reading = read({ 'cables.csv': GOOD['cables.csv'] });
    expect(reading.entries).toHaveLength(2);
    expect(reading.notes).toEqual(['Nothing was measured yet: there are no readings.']);
  });

  it('lets tools be named that nobody described, and says what is assumed', () => {
    const { 'instruments.csv': _, ...without } = GOOD;
    expect(read(without).notes).toEqual([
      'readings.csv names tools that no instruments.csv describes; usual limits of error are assumed.',
    ]);
  });

  it('reads a decimal comma in what a tool was checked against, where semicolons part the cells', () => {
    const checks = 'check;instrument;known_value;unit;read_value\nk1;scale;100,005;g;100,020\n';
    const [check] = fold(read({ ...GOOD, 'checks.csv': checks }).entries).checks;
    expect([check!.row.known_value, check!.row.read_value]).toEqual(['100.005', '100.020']);
  });

  it('refuses a check of a tool, and a repair of a piece, that nothing describes', () => {
    const reading = read({
      ...GOOD,
      'checks.csv': 'check,instrument,known_value,unit,read_value\nk1,scal,100,g,100\n',
      'retags.csv': 'retag,kind,specimen,becomes,why\nt1,swap,q1,s9,mixed up\n',
    });
    expect(reading.refusals.map(({ file, column, advice }) => [file, column, advice])).toEqual([
      ['checks.csv', 'instrument', 'Did you mean scale?'],
      ['retags.csv', 'becomes', 'Add a row for it to specimens.csv, or correct the name.'],
    ]);
  });
});
