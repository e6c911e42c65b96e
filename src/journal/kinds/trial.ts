import { needed, quantity, type TableShape, text } from '../tableShape.ts';

/** What the trial is: one row. */
export const TRIAL_TABLE: TableShape = {
  kind: 'trial',
  file: 'trial.csv',
  key: ['trial'],
  columns: [
    needed('trial', 'Short name of the trial, used in addresses and file names'),
    text('title', 'Title as readers see it'),
    text('purpose', 'What the trial is to settle'),
    text('place', 'Where it was done'),
    quantity('target_temperature', 'Temperature that all pieces were soaked to', 'temperature', 'temperature_unit', {
      defaultUnit: 'C',
    }),
    text('temperature_unit', 'Unit of target_temperature; C when blank'),
    text('opened_on', 'Day on which the trial began', { moment: true }),
    text('disclosure', 'Who paid for what'),
  ],
};
