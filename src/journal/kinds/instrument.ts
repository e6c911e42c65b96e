import { needed, type TableShape, text } from '../tableShape.ts';

/** The tools, with their limits of error as the box prints them: ±(max_error + percent of the reading + counts). */
export const INSTRUMENT_TABLE: TableShape = {
  kind: 'instrument',
  file: 'instruments.csv',
  key: ['instrument'],
  columns: [
    needed('instrument', 'Short name of the tool'),
    text('kind', 'Pocket scale, steel rule, digital caliper, four-wire meter …'),
    needed('resolution', 'Smallest step that it shows', { number: true, least: 'positive' }),
    text('max_error', 'Limit of error in the same unit, or as the box prints it: 0.5 % + 3 counts', { limit: true }),
    text('max_error_percent', 'Limit of error, per cent of the reading', { number: true, least: 'not negative' }),
    text('max_error_counts', 'Limit of error, steps of the last digit', { number: true, least: 'not negative' }),
    needed('unit', 'Unit of resolution and max_error'),
    text('valid_from_C', 'Lowest temperature at which the limits hold, °C', { number: true, least: 'any' }),
    text('valid_to_C', 'Highest temperature at which the limits hold, °C', { number: true, least: 'any' }),
    text('calibrated_on', 'Day of the last calibration', { moment: true }),
    text('note', 'Anything else'),
  ],
};
