import { needed, quantity, type TableShape, text } from '../tableShape.ts';

/** The pieces cut from the cables, and which piece each was cut from. */
export const SPECIMEN_TABLE: TableShape = {
  kind: 'specimen',
  file: 'specimens.csv',
  key: ['specimen'],
  columns: [
    needed('specimen', 'Short name of the piece'),
    needed('cable', 'Cable that it is a piece of', { refersTo: 'cable' }),
    text('code', 'Blind code on its tag'),
    quantity('cut_length', 'Length as cut', 'length', 'cut_length_unit', { defaultUnit: 'mm' }),
    text('cut_length_unit', 'Unit of cut_length; mm when blank'),
    text('cut_from', 'Piece that it was cut from', { refersTo: 'specimen' }),
    text('kind', 'Whole bought length, or piece to bend, take apart, abuse or keep back', {
      values: ['whole', 'bend', 'apart', 'abuse', 'kept'],
    }),
    text('taken_from', 'Where along the cable', { values: ['start', 'middle', 'end'] }),
    text('note', 'Anything else'),
  ],
};
