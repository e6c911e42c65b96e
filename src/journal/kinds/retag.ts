import { needed, type TableShape, text } from '../tableShape.ts';

/** A mix-up of pieces put right in one act: two were swapped, or a tag was wrong, for what was read in a span of time. */
export const RETAG_TABLE: TableShape = {
  kind: 'retag',
  file: 'retags.csv',
  key: ['retag'],
  columns: [
    needed('retag', 'Short name of the repair'),
    needed('kind', 'swap: the two pieces change places; tag: what was read on the first belongs to the second', {
      values: ['swap', 'tag'],
    }),
    needed('specimen', 'Piece as it was recorded', { refersTo: 'specimen' }),
    needed('becomes', 'Piece that it really was', { refersTo: 'specimen' }),
    text('from', 'First moment at which it was wrong; from the beginning when blank', { moment: true }),
    text('until', 'Last moment at which it was wrong; when blank, the moment at which this was said', { moment: true }),
    needed('why', 'How it is known'),
    text('at', 'When this was said', { moment: true }),
    text('by', 'Who said it'),
  ],
};
