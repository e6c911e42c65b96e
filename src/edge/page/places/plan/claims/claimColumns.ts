/** The fields of a cable, in the order in which people read a label and a receipt. */
export interface ClaimColumn {
  column: string;
  label: string;
  hint?: string;
  example?: string;
  choices?: readonly (readonly [string, string])[];
  words?: readonly string[];
}

const YES_NO_UNKNOWN = [
  ['', 'not said'],
  ['yes', 'yes'],
  ['no', 'no'],
  ['unknown', 'unknown'],
] as const;

/** Columns of the table itself. */
export const MAIN_COLUMNS: readonly ClaimColumn[] = [
  { column: 'maker', label: 'Maker' },
  { column: 'model', label: 'Model' },
  { column: 'claimed_size', label: 'Size on the label', example: 'such as 2 AWG' },
  { column: 'claimed_metal', label: 'Metal on the label', example: 'such as OFC' },
  { column: 'claimed_strands', label: 'Strands', example: 'such as 665' },
  { column: 'claimed_temperature', label: 'Rating', example: 'such as 105 C' },
  { column: 'bought_length', label: 'Length bought', example: 'such as 10 ft' },
  { column: 'price', label: 'Price', example: 'such as 39.90' },
  {
    column: 'price_per',
    label: 'Price of',
    choices: [
      ['', 'all of it'],
      ['piece', 'a piece'],
      ['metre', 'a metre'],
      ['foot', 'a foot'],
      ['spool', 'a spool'],
    ],
  },
];

/** Further fields, opened row by row. */
export const MORE_COLUMNS: readonly { name: string; columns: readonly ClaimColumn[] }[] = [
  {
    name: 'More of the label',
    columns: [
      { column: 'printed_on_jacket', label: 'Printed on the jacket', hint: 'word for word' },
      { column: 'claimed_strand_diameter', label: 'Strand diameter', example: 'such as 0.25 mm' },
      { column: 'claimed_ohms', label: 'Ohms per length', example: 'such as 0.53 mohm/m' },
      { column: 'claimed_mass', label: 'Mass per length', example: 'such as 340 g/m' },
      { column: 'claimed_outer_diameter', label: 'Outer diameter', example: 'such as 11.5 mm' },
    ],
  },
  {
    name: 'The purchase',
    columns: [
      { column: 'bought_from', label: 'Bought from' },
      { column: 'bought_on', label: 'Bought on', example: 'such as 2026-10-03' },
      {
        column: 'supplied_free',
        label: 'Paid for',
        choices: [
          ['', 'not said'],
          ['no', 'paid'],
          ['yes', 'supplied free'],
        ],
      },
      { column: 'sold_by', label: 'Sold by', words: ['the foot', 'the metre', 'spool', 'kit'] },
      { column: 'price_length', label: 'Length on the spool', example: 'such as 30 m' },
      { column: 'currency', label: 'Currency', words: ['USD', 'EUR', 'GBP'] },
      { column: 'price_on', label: 'Price of the day', example: 'such as 2026-10-03' },
      { column: 'shipping_included', label: 'Shipping in the price', choices: YES_NO_UNKNOWN },
      { column: 'tax_included', label: 'Tax in the price', choices: YES_NO_UNKNOWN },
    ],
  },
  {
    name: 'The piece',
    columns: [
      {
        column: 'jacket_colour',
        label: 'Jacket colour',
        words: ['black', 'red', 'blue', 'green', 'yellow', 'orange', 'brown', 'purple', 'grey', 'white', 'clear'],
      },
      { column: 'lot', label: 'Lot or date code' },
      {
        column: 'shared_name',
        label: 'Known in other trials as',
        hint: 'one name for one piece, measured again in every trial',
      },
      { column: 'age', label: 'Age' },
      { column: 'condition', label: 'Condition as received' },
      { column: 'stranding', label: 'Stranding', words: ['bunched', 'rope-laid', 'solid'] },
      {
        column: 'role',
        label: 'Part in the trial',
        choices: [
          ['', 'compared'],
          ['control', 'control piece'],
          ['reference', 'reference, outside the order'],
        ],
      },
      { column: 'note', label: 'Note' },
    ],
  },
];
