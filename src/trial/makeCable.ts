import type { Entry } from '../journal/entry.ts';
import type { CellReader } from './cells.ts';
import { cell } from './cells.ts';
import type { Cable, CableRole, Label } from './trial.ts';

function roleOf(text: string): CableRole {
  const typed = text.toLowerCase();
  return typed === 'control' || typed === 'reference' ? typed : 'compared';
}

function labelOf(row: Entry['body'], cells: CellReader): Label {
  return {
    size: cell(row, 'claimed_size'),
    metal: cell(row, 'claimed_metal'),
    strands: cells.value(row, 'claimed_strands'),
    strandDiameter: cells.value(row, 'claimed_strand_diameter'),
    temperature: cells.value(row, 'claimed_temperature'),
    ohmsPerMetre: cells.value(row, 'claimed_ohms'),
    massPerMetre: cells.value(row, 'claimed_mass'),
    outerDiameter: cells.value(row, 'claimed_outer_diameter'),
    printedOnJacket: cell(row, 'printed_on_jacket'),
  };
}

/** A cable and its label out of its row. */
export function makeCable(entry: Entry, cells: CellReader): Cable {
  const row = entry.body;
  const cable = cell(row, 'cable');
  const name = [cell(row, 'maker'), cell(row, 'model')].filter((part) => part !== '').join(' ');
  return {
    entry: entry.id,
    row,
    cable,
    name: name || cable,
    role: roleOf(cell(row, 'role')),
    label: labelOf(row, cells),
    boughtLength: cells.value(row, 'bought_length'),
    jacketColour: cell(row, 'jacket_colour'),
  };
}
