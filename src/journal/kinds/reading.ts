import { QUANTITY_NAMES } from '../quantities.ts';
import { needed, quantity, type TableShape, text } from '../tableShape.ts';

/** Every number read off a tool or counted, one row each; a correction is a new row that names the one it replaces. */
export const READING_TABLE: TableShape = {
  kind: 'reading',
  file: 'readings.csv',
  key: ['reading'],
  columns: [
    needed('reading', 'Short name of the reading'),
    needed('specimen', 'Piece that was measured', { refersTo: 'specimen' }),
    needed('quantity', 'What was measured', { values: QUANTITY_NAMES }),
    needed('value', 'Number exactly as read'),
    needed('unit', 'Unit of value; blank for a count', { mayBeBlank: true }),
    text('instrument', 'Tool that it was read from', { refersTo: 'instrument', mayBeUndescribed: true }),
    text('at', 'When', { moment: true }),
    quantity(
      'temperature',
      'Temperature of the piece; of the copper for a resistance',
      'temperature',
      'temperature_unit',
      {
        defaultUnit: 'C',
      },
    ),
    text('temperature_unit', 'Unit of temperature; C when blank'),
    text('by', 'Who read it'),
    quantity('at_length', 'Length between the voltage contacts', 'length', 'at_length_unit', { defaultUnit: 'mm' }),
    text('at_length_unit', 'Unit of at_length; mm when blank'),
    text('set', 'Any text shared by readings taken together'),
    text('position', 'Where or how: up, down, clock hour, loading, unloading'),
    text('replaces', 'Reading that this one corrects', { refersTo: 'reading' }),
    text('why', 'Why it corrects that one'),
    text('note', 'Anything else'),
    text('footage', 'Recording in which it can be seen, or from which it was entered later'),
    text('timecode', 'Where in that recording: 12:31 or 1:02:31', { timecode: true }),
  ],
};
