import { needed, type TableShape, text } from '../tableShape.ts';

/** What the eye and the magnet said. */
export const EVIDENCE_TABLE: TableShape = {
  kind: 'evidence',
  file: 'evidence.csv',
  key: null,
  columns: [
    text('evidence', 'Short name of the look, so that it can be put aside'),
    needed('cable', 'Cable looked at', { refersTo: 'cable' }),
    needed('look', 'What was done: scraped_strand, magnet, print_on_jacket …'),
    text('where', 'Outer, middle or centre strand'),
    text('count', 'How many strands were looked at, or how many of them showed it: 10, or 3 of 10'),
    needed('seen', 'What was seen: red through, white core, tin outside, pulls, no pull …'),
    text('by', 'Who looked'),
    text('at', 'When', { moment: true }),
    text('photo', 'Name of the photo'),
    text('note', 'Anything else'),
  ],
};
