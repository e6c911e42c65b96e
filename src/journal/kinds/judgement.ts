import { needed, quantity, type TableShape, text } from '../tableShape.ts';

/** Two pieces bent by hand, and which of them bends more easily. */
export const JUDGEMENT_TABLE: TableShape = {
  kind: 'judgement',
  file: 'judgements.csv',
  key: ['judgement'],
  columns: [
    needed('judgement', 'Short name of the judgement'),
    needed('left', 'Piece in the left hand', { refersTo: 'specimen' }),
    needed('right', 'Piece in the right hand', { refersTo: 'specimen' }),
    needed('result', 'Which bends more easily', { values: ['left', 'right', 'same'] }),
    text('by', 'Who judged'),
    text('round', 'Which round'),
    text('at', 'When', { moment: true }),
    quantity('temperature', 'Temperature of the pieces', 'temperature', 'temperature_unit', { defaultUnit: 'C' }),
    text('temperature_unit', 'Unit of temperature; C when blank'),
    text('blinded', 'How the judge was kept from knowing: open, sleeve, eyes covered, other room'),
    text('note', 'Anything else'),
  ],
};
