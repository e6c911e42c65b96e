import { needed, quantity, type TableShape, text } from '../tableShape.ts';

/** What a tool can be held against. `zero`: nothing on the scale, jaws closed, clips shorted: shows how far it drifts. */
export const KNOWN_THINGS = [
  'gauge block',
  'check weight',
  'reference resistor',
  'water',
  'ball bearing',
  'control wire',
  'zero',
  'other',
] as const;

/** A tool held against something known: what it should have read, and what it did read. */
export const CHECK_TABLE: TableShape = {
  kind: 'check',
  file: 'checks.csv',
  key: ['check'],
  columns: [
    needed('check', 'Short name of the check'),
    needed('instrument', 'Tool that was checked', { refersTo: 'instrument' }),
    text('against', 'What it was held against; zero for nothing on the scale, jaws closed or clips shorted', {
      values: KNOWN_THINGS,
    }),
    text('known_value', 'What the known thing is, in unit; blank for zero', { inUnitColumn: true }),
    needed('unit', 'Unit of known_value, known_error and read_value'),
    text('known_error', 'How far the known thing may be from known_value: 0.005, or 0.1 %', { limit: true }),
    needed('read_value', 'What the tool read', { inUnitColumn: true }),
    text('at', 'When', { moment: true }),
    quantity('temperature', 'Temperature of tool and known thing', 'temperature', 'temperature_unit', {
      defaultUnit: 'C',
    }),
    text('temperature_unit', 'Unit of temperature; C when blank'),
    text('by', 'Who checked'),
    text('note', 'Anything else'),
  ],
};
