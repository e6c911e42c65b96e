import { needed, type TableShape, text } from '../tableShape.ts';

/** What can be put aside. */
export const WITHDRAWN_KINDS = [
  'trial',
  'cable',
  'fitting',
  'instrument',
  'check',
  'specimen',
  'evidence',
  'judgement',
  'endurance',
] as const;
export type WithdrawnKind = (typeof WITHDRAWN_KINDS)[number];

/** Something entered by mistake put aside, with a reason, or taken up again. It stays on record either way. */
export const WITHDRAWAL_TABLE: TableShape = {
  kind: 'withdrawal',
  file: 'withdrawals.csv',
  key: ['withdrawal'],
  columns: [
    needed('withdrawal', 'Short name of the act'),
    text('act', 'put aside, also when blank: it counts no longer; taken up again: it counts as before', {
      values: ['put aside', 'taken up again'],
    }),
    needed('about', 'Kind of thing', { values: WITHDRAWN_KINDS }),
    text(
      'which',
      'Its name; blank for the trial. A look or an endurance row without a name goes by the mark that is made of what it says',
    ),
    text('tried_with', 'Of a fitting, only where this cable was tried in it; everywhere when blank', {
      refersTo: 'cable',
    }),
    needed('why', 'Why it is put aside, or taken up again'),
    text('at', 'When', { moment: true }),
    text('by', 'Who did it'),
  ],
};
