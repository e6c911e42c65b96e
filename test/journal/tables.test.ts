import { describe, expect, it } from 'vitest';
import { ENTRY_KINDS } from '../../src/journal/entry.ts';
import { nearestWord } from '../../src/journal/nearestWord.ts';
import { QUANTITIES, QUANTITY_NAMES, quantityNamed } from '../../src/journal/quantities.ts';
import { checkRow } from '../../src/journal/rowCheck.ts';
import { rowKey } from '../../src/journal/tableShape.ts';
import { TABLES, tableOfFile, tableOfKind } from '../../src/journal/tables.ts';

describe('the tables', () => {
  it('are one for each kind, each with its own file', () => {
    expect(TABLES.map(({ kind }) => kind)).toEqual([...ENTRY_KINDS]);
    expect(new Set(TABLES.map(({ file }) => file)).size).toBe(TABLES.length);
  });

  it('name each column once, keep their keys among them, and say what each holds', () => {
    for (const { columns, key } of TABLES) {
      const names = columns.map(({ name }) => name);
      expect(new Set(names).size).toBe(names.length);
      expect(names).toEqual(expect.arrayContaining([...(key ?? [])]));
      expect(columns.every(({ meaning }) => meaning.length > 3)).toBe(true);
    }
  });

  it('have every unit column that a quantity names', () => {
    for (const { columns } of TABLES) {
      const names = new Set(columns.map(({ name }) => name));
      for (const column of columns) if (column.unitColumn) expect(names).toContain(column.unitColumn);
    }
  });

  it('refer only to tables that have a key, above them or themselves', () => {
    for (const [i, { columns }] of TABLES.entries()) {
      for (const { refersTo } of columns) {
        if (refersTo === undefined) continue;
        const target = tableOfKind(refersTo)!;
        expect(target.key).not.toBeNull();
        expect(TABLES.indexOf(target)).toBeLessThanOrEqual(i);
      }
    }
  });

  it('are found by kind and by file, whatever the case', () => {
    expect(tableOfFile('Readings.CSV')?.kind).toBe('reading');
    expect(tableOfFile('photos.csv')).toBeNull();
    expect(tableOfKind('toString')).toBeNull();
    expect(quantityNamed('constructor')).toBeNull();
  });

  it('make a key of one column or of several', () => {
    expect(rowKey(tableOfKind('cable')!, { cable: ' a ' })).toBe('a');
    const fitting = tableOfKind('fitting')!;
    expect(rowKey(fitting, { fitting: 'a', tried_with: 'b' })).not.toBe(rowKey(fitting, { fitting: 'ab' }));
    expect(rowKey(tableOfKind('current')!, {})).toBeNull();
  });
});

describe('the quantities', () => {
  const UNITS: Record<string, string> = {
    length: 'mm',
    mass: 'g',
    count: '',
    resistance: 'mohm',
    voltage: 'mV',
    current: 'A',
    angle: 'deg',
    force: 'N',
    ratio: '%',
  };

  it.each(QUANTITY_NAMES)('%s can be read in a usual unit', (quantity) => {
    const { dimension } = QUANTITIES[quantity];
    const unit = dimension === null ? 'Shore A' : UNITS[dimension]!;
    const row = { reading: 'r', specimen: 's', quantity, value: '12', unit };
    expect(checkRow(tableOfKind('reading')!, row, { now: 0 })).toEqual([]);
  });
});

describe('nearestWord', () => {
  it.each([
    ['conductor mass', 'conductor_mass'],
    ['Strand-Count', 'strand_count'],
    ['resistence', 'resistance'],
    ['weight', null],
    ['', null],
    ['x'.repeat(100), null],
  ])('takes "%s" for %s', (typed, wanted) => {
    expect(nearestWord(typed, QUANTITY_NAMES)).toBe(wanted);
  });
});
