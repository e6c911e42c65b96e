import { needed, quantity, type TableShape, text } from '../tableShape.ts';

/** How long a jacket lasted under abuse, and whether the piece survived to the end. */
export const ENDURANCE_TABLE: TableShape = {
  kind: 'endurance',
  file: 'endurance.csv',
  key: null,
  columns: [
    text('endurance', 'Short name of the row, so that a later one can replace it'),
    needed('specimen', 'Piece that was abused', { refersTo: 'specimen' }),
    needed('test', 'Scrape, sandpaper, cut-through, pinch, hot iron, cold bend, fluid …'),
    needed('amount', 'How much it took until it failed, or until the test was ended', {
      number: true,
      least: 'positive',
    }),
    needed('unit', 'Unit of amount: strokes, N, s …'),
    text('amount_by', 'How hours of an exposure are known: clocked where it was run, or planned and known otherwise', {
      values: ['clock', 'planned'],
    }),
    needed('outcome', 'Whether it failed', { values: ['failed', 'survived'] }),
    text(
      'inspected_every',
      'Looked at only every so much, in the unit of amount; blank: the moment of failure was seen',
      {
        number: true,
        least: 'positive',
      },
    ),
    text('stress', 'Load during the test', { number: true, least: 'not negative' }),
    text('stress_unit', 'Unit of stress'),
    quantity('temperature', 'Temperature of the piece', 'temperature', 'temperature_unit', { defaultUnit: 'C' }),
    text('temperature_unit', 'Unit of temperature; C when blank'),
    text('by', 'Who did it'),
    text('at', 'When', { moment: true }),
    text('replaces', 'Name of the row that this one corrects'),
    text('why', 'Why it corrects that one'),
    text('note', 'Anything else'),
  ],
};
