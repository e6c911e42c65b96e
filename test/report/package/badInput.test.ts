import { describe, expect, it } from 'vitest';
import { GOOD, read, sentences } from './files.ts';

const READINGS = 'reading,specimen,quantity,value,unit\n';
const withReading = (row: string, header = READINGS) => ({ ...GOOD, 'readings.csv': `${header}${row}\n` });

/** What is brought, and the sentence that it gets. */
const REFUSED: readonly [string, Record<string, string | Uint8Array>, string][] = [
  [
    'an empty folder',
    {},
    'the package: found an empty folder; expected at least cables.csv. A package has cables.csv, and readings.csv with specimens.csv once something was measured.',
  ],
  [
    'a folder of other things',
    { 'photo.jpg': 'x', 'notes.docx': 'y' },
    'the package: found no table of a trial among its files; expected at least cables.csv. A package has cables.csv, and readings.csv with specimens.csv once something was measured.',
  ],
  [
    'no cables.csv',
    { 'readings.csv': GOOD['readings.csv'] },
    'cables.csv: found no such file; expected one row for each cable. A package has cables.csv, and readings.csv with specimens.csv once something was measured.',
  ],
  [
    'a missing file that another needs',
    { 'cables.csv': GOOD['cables.csv'], 'readings.csv': GOOD['readings.csv'] },
    'specimens.csv: found no such file, or no rows in it; expected a row for each specimen that readings.csv names.',
  ],
  [
    'an empty file',
    { ...GOOD, 'cables.csv': '' },
    'cables.csv: found an empty file; expected the columns cable, claimed_size.',
  ],
  [
    'a header without rows where one is needed',
    { 'cables.csv': 'cable,claimed_size\n' },
    'cables.csv: found no rows; expected one row for each cable.',
  ],
  [
    'a missing column',
    { ...GOOD, 'cables.csv': 'cable,claimed_sise\nquill,2 AWG\n' },
    'cables.csv, line 1, claimed_size: found no column claimed_size; expected the columns cable, claimed_size. Is claimed_sise meant to be claimed_size?',
  ],
  [
    'a column that comes twice',
    { ...GOOD, 'cables.csv': 'cable,claimed_size,Cable\nquill,2 AWG,q\n' },
    'cables.csv, line 1, cable: found two columns called cable; expected each column once.',
  ],
  [
    'a column that would change how objects behave',
    { ...GOOD, 'cables.csv': 'cable,claimed_size,__proto__\nquill,2 AWG,q\n' },
    'cables.csv, line 1, __proto__: found a column called __proto__; expected another name.',
  ],
  [
    'a blank where something is needed',
    { ...GOOD, 'cables.csv': 'cable,claimed_size\nquill,\n' },
    'cables.csv, line 2, claimed_size: found nothing; expected size exactly as printed on the label.',
  ],
  [
    'an unquoted decimal comma in a table with commas',
    withReading('r1,q1,conductor_mass,93,10,g'),
    'readings.csv, line 2: found 6 cells; expected 5, as in the header. A cell that holds a comma, such as 12,5, must stand in quotation marks.',
  ],
  [
    'a comma that may part thousands or decimals',
    withReading('r1,q1,conductor_mass,"1,064",g'),
    'readings.csv, line 2, value: found "1,064", which may mean 1.064 or 1064; expected a mass, such as 39.27 g. Type 1.064 or 1064.',
  ],
  [
    'a quotation mark that is never closed',
    withReading('r1,q1,conductor_mass,"93.1,g'),
    'readings.csv, line 2: found a quotation mark that is never closed, or one in the middle of a quoted cell; expected quotation marks in pairs. Inside a quoted cell a quotation mark is written twice.',
  ],
  [
    'a bad row after a cell with line breaks',
    withReading(
      'r1,q1,conductor_mass,93.1,g,"two\r\nlines"\r\nr2,q1,conductor_mass,-1,g,',
      `${READINGS.trim()},note\r\n`,
    ),
    'readings.csv, line 4, value: found "-1"; expected a mass above zero.',
  ],
  [
    'NaN',
    withReading('r1,q1,conductor_mass,NaN,g'),
    'readings.csv, line 2, value: found "NaN"; expected a mass, such as 39.27 g.',
  ],
  [
    'Infinity',
    withReading('r1,q1,conductor_mass,Infinity,g'),
    'readings.csv, line 2, value: found "Infinity"; expected a mass, such as 39.27 g.',
  ],
  [
    'a negative mass',
    withReading('r1,q1,conductor_mass,-93.1,g'),
    'readings.csv, line 2, value: found "-93.1"; expected a mass above zero.',
  ],
  [
    'a mass of nothing',
    withReading('r1,q1,conductor_mass,0,g'),
    'readings.csv, line 2, value: found "0"; expected a mass above zero.',
  ],
  [
    'an absurd mass',
    withReading('r1,q1,conductor_mass,93100000,kg'),
    'readings.csv, line 2, value: found "93100000"; expected a mass of at most 10 t. Check the decimal point and the unit.',
  ],
  [
    'a temperature that no bench has',
    withReading('r1,q1,resistance,0.97,mohm,293', `${READINGS.trim()},temperature\n`),
    'readings.csv, line 2, temperature: found "293"; expected a temperature between −60 °C and 200 °C. Check its unit: C, F or K.',
  ],
  [
    'a temperature below absolute zero',
    withReading('r1,q1,resistance,0.97,mohm,-300', `${READINGS.trim()},temperature\n`),
    'readings.csv, line 2, temperature: found "-300", below absolute zero; expected a temperature, such as 20 °C.',
  ],
  [
    'a unit of the wrong kind',
    withReading('r1,q1,conductor_length,5.6,oz'),
    'readings.csv, line 2, value: found "5.6 oz" (a mass); expected a length, such as 150 mm.',
  ],
  [
    'a resistance per length where a resistance is read',
    withReading('r1,q1,resistance,0.53,mohm/m'),
    'readings.csv, line 2, value: found "0.53 mohm/m" (a resistance per length); expected a resistance, such as 0.39 mΩ.',
  ],
  [
    'no unit where one is needed',
    withReading('r1,q1,conductor_mass,93.1,'),
    'readings.csv, line 2, unit: found nothing; expected one of g, kg, mg, oz, lb.',
  ],
  [
    'a quantity that is not in the list',
    withReading('r1,q1,conductor mas,93.1,g'),
    'readings.csv, line 2, quantity: found "conductor mas"; expected a word from the list of this column. Did you mean conductor_mass?',
  ],
  [
    'half a strand',
    withReading('r1,q1,strand_count,664.5,'),
    'readings.csv, line 2, value: found "664.5"; expected a whole number: number of strands.',
  ],
  [
    'a word outside a short list',
    { ...GOOD, 'specimens.csv': 'specimen,cable,kind\nq1,quill,spare\ns1,saltmarsh,apart\n' },
    'specimens.csv, line 2, kind: found "spare"; expected one of whole, bend, apart, abuse, kept.',
  ],
  [
    'a name twice',
    withReading('r1,q1,conductor_mass,93.1,g\nr1,q1,conductor_mass,93.2,g'),
    'readings.csv, line 3, reading: found "r1", which line 2 has already; expected a name of its own.',
  ],
  [
    'a piece of an unknown cable',
    { ...GOOD, 'specimens.csv': 'specimen,cable\nq1,quil\ns1,saltmarsh\n' },
    'specimens.csv, line 2, cable: found "quil", which is not described; expected a name that cables.csv describes. Did you mean quill?',
  ],
  [
    'a reading of an unknown piece',
    withReading('r1,z9,conductor_mass,93.1,g'),
    'readings.csv, line 2, specimen: found "z9", which is not described; expected a name that specimens.csv describes. Add a row for it to specimens.csv, or correct the name.',
  ],
  [
    'a reading by an unknown tool',
    withReading('r1,q1,conductor_mass,93.1,g,balance', `${READINGS.trim()},instrument\n`),
    'readings.csv, line 2, instrument: found "balance", which is not described; expected a name that instruments.csv describes. Add a row for it to instruments.csv, or correct the name.',
  ],
  [
    'a correction of a reading that is not there',
    withReading('r2,q1,conductor_mass,93.1,g,r1', `${READINGS.trim()},replaces\n`),
    'readings.csv, line 2, replaces: found "r1", which is not described; expected a name that readings.csv describes. Add a row for it to readings.csv, or correct the name.',
  ],
  [
    'a day that has not come',
    withReading('r1,q1,conductor_mass,93.1,g,2026-11-27', `${READINGS.trim()},at\n`),
    'readings.csv, line 2, at: found "2026-11-27", which is in the future; expected a day that has come.',
  ],
  [
    'a day that is no day',
    withReading('r1,q1,conductor_mass,93.1,g,2026-02-30', `${READINGS.trim()},at\n`),
    'readings.csv, line 2, at: found "2026-02-30", which is no day of the calendar; expected a date such as 2026-11-25, or a date and time such as 2026-11-25T14:30Z.',
  ],
  [
    'a date that means two days',
    withReading('r1,q1,conductor_mass,93.1,g,03/10/2026', `${READINGS.trim()},at\n`),
    'readings.csv, line 2, at: found "03/10/2026"; expected a date such as 2026-11-25, or a date and time such as 2026-11-25T14:30Z. Write the year first, then month and day, with hyphens.',
  ],
  [
    'a strand wider than its cable',
    withReading('r1,q1,outer_diameter,11.2,mm\nr2,q1,strand_diameter,25.5,mm'),
    'readings.csv, line 3, value: found "25.5 mm", a strand wider than the whole cable quill; expected a strand thinner than the outer diameter read on the same cable. Check the unit and the decimal point.',
  ],
  [
    'a label with a strand wider than the cable',
    {
      ...GOOD,
      'cables.csv':
        'cable,claimed_size,claimed_strand_diameter,claimed_outer_diameter\nquill,2 AWG,25 mm,11 mm\nsaltmarsh,2 AWG,,\n',
    },
    'cables.csv, line 2, claimed_strand_diameter: found "25 mm", wider than the whole cable; expected a strand thinner than claimed_outer_diameter. Check the units of both.',
  ],
  [
    'a tool whose unit nobody knows',
    { ...GOOD, 'instruments.csv': 'instrument,resolution,unit\nscale,1,stone\n' },
    'instruments.csv, line 2, unit: found "stone"; expected a unit, such as g, mm, mohm, C, V or A.',
  ],
  [
    'a limit of error in another kind of unit',
    { ...GOOD, 'instruments.csv': 'instrument,resolution,max_error,unit\nscale,1,0.5 mm,g\n' },
    'instruments.csv, line 2, max_error: found "0.5 mm"; expected a limit of error, such as 0.02, ±0.02 mm or 0.5 % + 3 counts.',
  ],
  [
    'two trials in one package',
    { ...GOOD, 'trial.csv': 'trial\nclub\nother\n' },
    'trial.csv, line 3: found a second trial; expected one row.',
  ],
  [
    'a spreadsheet named as a table',
    { ...GOOD, 'cables.csv': Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0) },
    'cables.csv: found a spreadsheet or archive under the name of a table; expected CSV. In the spreadsheet, save each table as CSV.',
  ],
  [
    'bytes that are no text',
    { ...GOOD, 'cables.csv': Uint8Array.of(99, 0, 1, 2, 0) },
    'cables.csv: found bytes that are no text; expected a table saved as CSV, UTF-8.',
  ],
];

describe('a package that cannot be right', () => {
  it.each(REFUSED)('%s gets its sentence, and nothing is let in', (_, files, sentence) => {
    const reading = read(files);
    expect(sentences(reading)).toContain(sentence);
    expect(reading.entries).toEqual([]);
  });

  it('is refused for its size before it is read', () => {
    const reading = read(GOOD, { limits: { fileBytes: 100 } });
    expect(sentences(reading)).toEqual(['readings.csv: found a file of 157 bytes; expected at most 100 bytes.']);
    const large = { 'cables.csv': new Uint8Array(2_000_001) };
    expect(sentences(read(large, { limits: { fileBytes: 1_000_000 } }))).toEqual([
      'cables.csv: found a file of 2 MB; expected at most 1 MB.',
    ]);
  });

  it('does not blame rows for a table that could not be read', () => {
    const reading = read({ ...GOOD, 'specimens.csv': 'piece,cable\nq1,quill\n' });
    expect(sentences(reading)).toEqual([
      'specimens.csv, line 1, specimen: found no column specimen; expected the columns specimen, cable.',
    ]);
  });

  it('names everything that is wrong in one go, by file and line', () => {
    const reading = read({
      ...GOOD,
      'cables.csv': 'cable,claimed_size\nquill,2 AWG\nsaltmarsh,\n',
      'readings.csv': `${READINGS}r1,q1,conductor_mass,-1,g\nr2,q1,conductor_mass,1,mm\n`,
    });
    expect(reading.refusals.map(({ file, line }) => `${file} ${line}`)).toEqual([
      'cables.csv 3',
      'specimens.csv 3',
      'readings.csv 2',
      'readings.csv 3',
    ]);
  });

  it('throws only on a wrong call', () => {
    expect(() => read(GOOD, { now: 'yesterday' })).toThrow(RangeError);
  });
});
