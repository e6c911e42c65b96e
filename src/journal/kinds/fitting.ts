import { needed, quantity, type TableShape, text } from '../tableShape.ts';

/** What may come of trying a cable in a fitting, in short words and in full ones. */
const TRIED = [
  'goes in',
  'goes in trimmed',
  'goes in with strands trimmed',
  'will not go',
  'too loose',
  'too loose to crimp',
] as const;

/** Lugs, ferrules and glands, and what happened when a cable was tried in them: one row per fitting and cable tried. */
export const FITTING_TABLE: TableShape = {
  kind: 'fitting',
  file: 'fittings.csv',
  key: ['fitting', 'tried_with'],
  columns: [
    needed('fitting', 'Short name of the fitting'),
    text('kind', 'Lug, ferrule, terminal, block, grommet or gland'),
    quantity('bore', 'Inner diameter', 'length', 'unit', { required: true }),
    needed('unit', 'Unit of bore'),
    text('tried_with', 'Cable that was tried in it', { refersTo: 'cable' }),
    text('tried', 'What happened', { values: TRIED }),
    text('note', 'Anything else'),
  ],
};
