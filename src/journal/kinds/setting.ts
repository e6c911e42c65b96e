import { needed, type TableShape, text } from '../tableShape.ts';

/** What is planned: one row for each setting, the later one counts. */
export const SETTING_TABLE: TableShape = {
  kind: 'setting',
  file: 'plan.csv',
  key: ['setting'],
  columns: [
    needed('setting', 'Name of the setting: methods, shortfall, repeats, working …'),
    text('value', 'What it is set to; blank takes it back'),
  ],
};
