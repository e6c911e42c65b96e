import { needed, type TableShape, text } from '../tableShape.ts';

/** Readings struck out: they stay on record and stop counting. */
export const STRIKE_TABLE: TableShape = {
  kind: 'strike',
  file: 'struck.csv',
  key: ['reading'],
  columns: [
    needed('reading', 'Reading that no longer counts', { refersTo: 'reading' }),
    needed('why', 'Why it does not count'),
    text('by', 'Who struck it out'),
    text('at', 'When', { moment: true }),
  ],
};
