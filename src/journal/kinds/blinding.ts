import { needed, type TableShape, text } from '../tableShape.ts';

/** When the trial went by codes alone, and when the names were shown: one row for each act. */
export const BLINDING_TABLE: TableShape = {
  kind: 'blinding',
  file: 'blinding.csv',
  key: null,
  columns: [
    needed('act', 'blind: from here on only codes are shown; show: names were shown to whoever cuts; reveal: to all', {
      values: ['blind', 'show', 'reveal'],
    }),
    text('at', 'When', { moment: true }),
    text('by', 'Who did it'),
    text('how', 'How nobody was to know: open, sleeve, eyes covered, other room'),
  ],
};
