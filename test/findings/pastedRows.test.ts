import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnOfHeading } from '../../src/findings/pasted/pastedColumns.ts';
import { splitRows } from '../../src/findings/pasted/splitRows.ts';
import { cablesFromPasted } from '../../src/findings/pastedRows.ts';

function paste(text: string, cables: string[] = []) {
  let made = 0;
  return cablesFromPasted(text, {
    trial: 'club',
    at: '2026-10-03T10:00:00.000Z',
    now: Date.UTC(2026, 10, 1),
    newId: () => `id ${++made}`,
    cables,
  });
}
const bodies = (text: string) => paste(text).entries.map((e) => e.body);

describe('pasted text in cells', () => {
  const cases: [string, string, string[][]][] = [
    [
      'tabs',
      'a\tb\nc\td\n',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'commas and blanks',
      ' a , b \r\n\r\nc,d',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'semicolons',
      'a;1,5\nb;2,5',
      [
        ['a', '1,5'],
        ['b', '2,5'],
      ],
    ],
    ['quotes that hold a comma and a quotation mark', '"a, ""b""",c', [['a, "b"', 'c']]],
    [
      'quotes that hold a line break',
      'x\t"a\nb"\ny\tz',
      [
        ['x', 'a\nb'],
        ['y', 'z'],
      ],
    ],
    [
      'a lone quotation mark',
      'a\tb\n"\tc',
      [
        ['a', 'b'],
        ['″', 'c'],
      ],
    ],
    [
      'a lone quotation mark at the end',
      'a,b\nc,"',
      [
        ['a', 'b'],
        ['c', '″'],
      ],
    ],
    [
      'inches',
      '1/2",a\n3",b',
      [
        ['1/2"', 'a'],
        ['3"', 'b'],
      ],
    ],
    ['a trailing blank cell', 'a\t\n', [['a', '']]],
  ];
  it.each(cases)('%s', (_what, text, wanted) => {
    expect(splitRows(text).map((r) => r.cells)).toEqual(wanted);
  });

  it('know the line on which each row begins', () => {
    expect(splitRows('a\t"x\ny"\n\nb\tc\n').map((r) => r.line)).toEqual([1, 4]);
  });

  it('end, whatever is pasted', () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('"', ',', '\t', '\n', 'a', ' ', ';', '″') }), (text) => {
        const cells = splitRows(text).flatMap((r) => r.cells);
        expect(cells.join('').length).toBeLessThanOrEqual(text.length);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });
});

describe('cables from pasted rows', () => {
  it('under headings, ours or the usual words', () => {
    expect(bodies('Brand\tProduct\tSize\tMaterial\tPrice\nHarrow\tMark 2\t1/0 AWG\tOFC\t$89.50')).toEqual([
      {
        maker: 'Harrow',
        model: 'Mark 2',
        claimed_size: '1/0 AWG',
        claimed_metal: 'OFC',
        price: '89.50',
        currency: '$',
        cable: 'harrow-mark-2',
      },
    ]);
    expect(bodies('cable,claimed_size,jacket colour\nq,2 AWG,red')).toEqual([
      { cable: 'q', claimed_size: '2 AWG', jacket_colour: 'red' },
    ]);
  });

  it('without headings, by what the columns hold', () => {
    expect(bodies('Harrow\tMark 2\t1/0 AWG\tOFC\t10 ft\t$45\nSedge\tPlain\t2 gauge\tCCA\t3 m\t$20')).toMatchObject([
      { maker: 'Harrow', model: 'Mark 2', claimed_size: '1/0 AWG', claimed_metal: 'OFC', bought_length: '10 ft' },
      {
        maker: 'Sedge',
        model: 'Plain',
        claimed_size: '2 gauge',
        claimed_metal: 'CCA',
        bought_length: '3 m',
        price: '20',
      },
    ]);
  });

  it('takes strands apart that are written as labels print them, and prices with their currency', () => {
    const rows = 'maker\tsize\tstrands\tprice\nHarrow\t2 AWG\t665 x 0.25\t3,75 USD\nSedge\t2 AWG\t665\t€ .90';
    expect(bodies(rows)).toMatchObject([
      {
        claimed_strands: '665',
        claimed_strand_diameter: '0.25',
        claimed_strand_unit: 'mm',
        price: '3,75',
        currency: 'USD',
      },
      { claimed_strands: '665', price: '.90', currency: 'EUR' },
    ]);
    const options = { trial: 't', at: '', newId: () => '', now: Date.UTC(2026, 10, 25), cables: [] };
    expect(cablesFromPasted(rows, options).said).toEqual(['“665 x 0.25” is read as 665 strands of 0.25 mm.']);
  });

  it.each(['″', '"', '”', "''", 'ditto'])('with %s for the cell above', (mark) => {
    expect(
      bodies(`maker\tsize\tmetal\nHarrow\t1/0 AWG\tOFC\nSedge\t${mark}\t${mark}\nTarn\t${mark}\tCCA`),
    ).toMatchObject([
      { maker: 'Harrow', claimed_size: '1/0 AWG', claimed_metal: 'OFC' },
      { maker: 'Sedge', claimed_size: '1/0 AWG', claimed_metal: 'OFC' },
      { maker: 'Tarn', claimed_size: '1/0 AWG', claimed_metal: 'CCA' },
    ]);
  });

  it('leave a blank blank', () => {
    expect(bodies('maker,size,metal\nHarrow,1/0 AWG,OFC\nSedge,2 AWG,')[1]).not.toHaveProperty('claimed_metal');
  });

  it('get names of their own', () => {
    const { entries } = paste('maker,size\nHarrow,1/0 AWG\nHarrow,2 AWG', ['harrow']);
    expect(entries.map((e) => e.body.cable)).toEqual(['harrow-2', 'harrow-3']);
  });

  it('refuse a row with its line, and keep the others', () => {
    const { entries, refused } = paste('maker\tsize\tlength\nHarrow\t1/0 AWG\t-3 m\nSedge\t2 AWG\t3 m\nTarn\t\t3 m');
    expect(entries.map((e) => e.body.maker)).toEqual(['Sedge']);
    expect(refused).toMatchObject([
      { line: 2, column: 'bought_length' },
      { line: 4, column: 'claimed_size', found: 'nothing' },
    ]);
  });

  it('refuse a mark with nothing above it, and a name twice', () => {
    expect(paste('maker,size\nHarrow,″').refused[0]).toMatchObject({ line: 2, column: 'claimed_size' });
    expect(paste('cable,size\nq,2 AWG\nq,4 AWG').refused).toMatchObject([{ line: 3, column: 'cable' }]);
  });

  it('refuse what holds no sizes, and nothing at all', () => {
    expect(paste('Harrow\tMark 2').refused).toMatchObject([{ column: 'claimed_size' }]);
    expect(paste(' \n').refused).toMatchObject([{ found: 'nothing' }]);
  });
});

it.each([
  ['Claimed Size', 'claimed_size'],
  ['bought-length', 'bought_length'],
  ['O.D.', 'claimed_outer_diameter'],
  ['stars', null],
])('the heading %s means %s', (heading, column) => {
  expect(columnOfHeading(heading)).toBe(column);
});
