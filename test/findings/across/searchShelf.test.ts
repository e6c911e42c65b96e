import { describe, expect, it } from 'vitest';
import {
  choicesOn,
  indexedShelf,
  orderShelf,
  type ShelfWish,
  searchShelf,
} from '../../../src/findings/across/searchShelf.ts';
import { tradeWords } from '../../../src/findings/across/tradeWords.ts';
import { figure, line } from './lines.ts';

const SHELF = indexedShelf([
  line('a', 'Brackenfell Boot Run', { lot: '24-07', price_per_m: 16 }),
  line('a', 'Élan Çable', { label: { size: '12 AWG', metal: 'copper', area_mm2: 3.31 }, supplied: true }),
  line('b', 'Nine Elms Cord', {
    label: { size: '1/0 AWG', metal: 'CCA', area_mm2: 53.5 },
    metal_found: 'copper-clad aluminium',
    price_per_m: 4,
    outcome: 'falls short',
  }),
  line('b', '🪢 <b>Knot</b>', {
    label: { size: 'huge', metal: '', area_mm2: null },
    metal_found: null,
    conductor_area: null,
    price_per_m: null,
    currency: '',
  }),
]);
const NO_WISH: ShelfWish = { words: '', size: '', metal: '', least: null, most: null, currency: '' };
const names = (found: ReturnType<typeof searchShelf>) => found.map((each) => each.line.name);
const found = (wish: Partial<ShelfWish>) => names(searchShelf(SHELF, { ...NO_WISH, ...wish }));

describe('words of the trade', () => {
  it.each([
    ['copper-clad aluminium', 'cca'],
    ['Copper clad aluminum', 'cca'],
    ['copper-clad steel', 'ccs'],
    ['CCA', 'copper-clad aluminium copper-clad aluminum clad aluminium'],
    ['tinned clad aluminium', 'cca'],
    ['tinned OFC', 'oxygen-free copper'],
    ['oxygen free copper', 'ofc'],
    ['TPC', 'tough-pitch copper'],
    ['tough pitch copper', 'tpc etp'],
    ['copper', 'cu'],
    ['tinned copper', ''],
    ['aluminium', 'al'],
    ['', ''],
  ])('%s is also %j', (metal, others) => {
    expect(tradeWords(metal)).toBe(others);
  });
});

describe('searching the shelf', () => {
  it.each<[string, Partial<ShelfWish>, string[]]>([
    ['nothing in particular', {}, ['Brackenfell Boot Run', 'Élan Çable', 'Nine Elms Cord', '🪢 <b>Knot</b>']],
    ['the beginning of a word', { words: 'brack' }, ['Brackenfell Boot Run']],
    ['two words in any order', { words: 'run brack' }, ['Brackenfell Boot Run']],
    ['words without their accents', { words: 'elan cable' }, ['Élan Çable']],
    ['a size, and not a size that ends like it', { words: '2 awg' }, ['Brackenfell Boot Run']],
    ['a size with a stroke', { words: '1/0 awg' }, ['Nine Elms Cord']],
    ['a phrase', { words: '"boot run"' }, ['Brackenfell Boot Run']],
    ['a phrase that is not there', { words: '"run boot"' }, []],
    ['a lot', { words: '24-07' }, ['Brackenfell Boot Run']],
    ['an outcome', { words: 'falls short' }, ['Nine Elms Cord']],
    ['what was given', { words: 'supplied' }, ['Élan Çable']],
    ['signs of a program, as text', { words: '<b>knot' }, ['🪢 <b>Knot</b>']],
    ['signs that stand nowhere', { words: '***' }, []],
    ['a picture that stands nowhere', { words: '🙂' }, []],
    ['a picture that stands nowhere beside a word', { words: 'copper 🙂' }, []],
    ['a picture in a name', { words: '🪢' }, ['🪢 <b>Knot</b>']],
    ['a word with a dash between', { words: 'brackenfell - boot' }, ['Brackenfell Boot Run']],
    ['only spaces', { words: '   ' }, ['Brackenfell Boot Run', 'Élan Çable', 'Nine Elms Cord', '🪢 <b>Knot</b>']],
    ['clad metal by its short word', { words: 'cca' }, ['Nine Elms Cord']],
    ['clad metal by its long word', { words: 'copper-clad aluminum' }, ['Nine Elms Cord']],
    ['oxygen-free by its long word', { words: 'oxygen-free' }, ['Brackenfell Boot Run']],
    ['a metal found', { metal: 'copper' }, ['Brackenfell Boot Run', 'Élan Çable']],
    ['a metal that was not settled', { metal: 'not settled' }, ['🪢 <b>Knot</b>']],
    ['a size chosen', { size: '53.5 mm²' }, ['Nine Elms Cord']],
    ['at least a price', { least: 12 }, ['Brackenfell Boot Run', 'Élan Çable']],
    ['at most a price, which leaves out what has none', { most: 12 }, ['Nine Elms Cord']],
    ['all of it together', { words: 'trial', metal: 'copper', least: 13, currency: 'EUR' }, ['Brackenfell Boot Run']],
  ])('finds %s', (_, wish, wanted) => {
    expect(found(wish)).toEqual(wanted);
  });

  it('offers every size by what labels mostly call it, every metal and currency once', () => {
    expect(choicesOn(SHELF)).toEqual({
      sizes: [
        { size: '3.31 mm²', label: '12 AWG (3.31 mm²)' },
        { size: '33.6 mm²', label: '2 AWG (33.6 mm²)' },
        { size: '53.5 mm²', label: '1/0 AWG (53.5 mm²)' },
        { size: 'huge', label: 'huge' },
      ],
      metals: ['copper', 'copper-clad aluminium', 'not settled'],
      currencies: ['EUR'],
    });
  });

  it('orders by any column, what has no figure last either way', () => {
    const by = (order: string, falling: boolean) => names(orderShelf(SHELF, order, falling));
    expect(by('price', false)[0]).toBe('Nine Elms Cord');
    expect(by('price', true)[0]).toBe('Brackenfell Boot Run');
    expect(by('price', false).at(-1)).toBe('🪢 <b>Knot</b>');
    expect(by('price', true).at(-1)).toBe('🪢 <b>Knot</b>');
    expect(by('size', false)).toEqual(['Élan Çable', 'Brackenfell Boot Run', 'Nine Elms Cord', '🪢 <b>Knot</b>']);
    expect(by('area', false).at(-1)).toBe('🪢 <b>Knot</b>');
  });

  it('looks through ten thousand lines well within a tenth of a second', () => {
    const many = indexedShelf(
      Array.from({ length: 10_000 }, (_, i) =>
        line(`t${i % 900}`, `Maker ${i % 300} Model ${i}`, { conductor_area: figure(30 + (i % 40), 'mm2', 0.01) }),
      ),
    );
    const start = performance.now();
    const hits = searchShelf(many, { ...NO_WISH, words: 'maker 17 model', metal: 'copper', least: 1 });
    orderShelf(hits, 'area', true);
    const took = performance.now() - start;
    expect(hits.length).toBeGreaterThan(30);
    expect(took, `${took} ms`).toBeLessThan(100);
  });
});
