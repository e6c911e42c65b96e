/** Columns whose own name says too little; the others are words with a line between. */
const COLUMN_WORDS: Readonly<Record<string, string>> = {
  claimed_size: 'size on the label',
  claimed_metal: 'metal on the label',
  claimed_strands: 'strands on the label',
  claimed_strand_diameter: 'strand diameter on the label',
  claimed_strand_unit: 'unit of the strand diameter',
  claimed_temperature: 'rating on the label',
  claimed_temperature_unit: 'unit of the rating',
  claimed_ohms: 'ohms per length on the label',
  claimed_mass: 'mass per length on the label',
  claimed_outer_diameter: 'outer diameter on the label',
  at_length: 'length between the voltage contacts',
  at_length_unit: 'unit of the length between the contacts',
  cut_length: 'cut length',
  max_error: 'limit of error',
  resolution: 'smallest step',
  price_per: 'what the price is of',
  specimen: 'piece',
  instrument: 'tool',
  at: 'time',
  by: 'who',
};

/** A column in words: `claimed_size` → `size on the label`. */
export const columnWords = (column: string): string => COLUMN_WORDS[column] ?? column.replaceAll('_', ' ');
