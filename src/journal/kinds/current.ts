import { needed, type TableShape, text } from '../tableShape.ts';

/** A log of a piece under current: one row per moment. */
export const CURRENT_TABLE: TableShape = {
  kind: 'current',
  file: 'currents.csv',
  key: null,
  columns: [
    needed('specimen', 'Piece under current', { refersTo: 'specimen' }),
    needed('time_s', 'Time since the current was switched on, s', { number: true, least: 'any' }),
    needed('current_A', 'Current, A', { number: true, least: 'any' }),
    text('conductor_C', 'Temperature among the strands, °C', { number: true, least: 'any' }),
    text('surface_C', 'Temperature of the jacket, °C', { number: true, least: 'any' }),
    text('ambient_C', 'Temperature of the surroundings, °C', { number: true, least: 'any' }),
    text('drop_V', 'Voltage between the contacts, V', { number: true, least: 'any' }),
  ],
};
