import { needed, quantity, type TableShape, text } from '../tableShape.ts';

const YES_NO = ['yes', 'no', 'unknown'] as const;

/** The cables of the trial, and what their labels claim. */
export const CABLE_TABLE: TableShape = {
  kind: 'cable',
  file: 'cables.csv',
  key: ['cable'],
  columns: [
    needed('cable', 'Short name of the cable'),
    text('role', 'Compared with the others, control piece of known metal, or reference outside the order', {
      values: ['compared', 'control', 'reference'],
    }),
    text('maker', 'Maker as named on the label'),
    text('model', 'Model as named on the label'),
    text('bought_from', 'Seller'),
    text('bought_on', 'Day of purchase', { moment: true }),
    text('supplied_free', 'Whether it was given rather than bought'),
    text('price', 'Price, of what price_per says; of the whole bought length when that is blank'),
    text('currency', 'Currency of the price'),
    text('price_per', 'What the price is of: the piece bought, a metre, a foot, or a spool of price_length', {
      values: ['piece', 'metre', 'foot', 'spool'],
    }),
    quantity(
      'price_length',
      'Length that the price is of: on the spool, or of the piece',
      'length',
      'price_length_unit',
      {
        defaultUnit: 'm',
      },
    ),
    text('price_length_unit', 'Unit of price_length; m when blank'),
    text('price_on', 'Day of the price', { moment: true }),
    text('shipping_included', 'Whether the price has shipping in it', { values: YES_NO }),
    text('tax_included', 'Whether the price has tax in it', { values: YES_NO }),
    quantity('bought_length', 'Length bought', 'length', 'bought_length_unit', { defaultUnit: 'm' }),
    text('bought_length_unit', 'Unit of bought_length; m when blank'),
    needed('claimed_size', 'Size exactly as printed on the label'),
    text('claimed_metal', 'Metal exactly as printed on the label'),
    quantity('claimed_strands', 'Number of strands that the label claims', 'count', ''),
    quantity('claimed_strand_diameter', 'Strand diameter that the label claims', 'length', 'claimed_strand_unit', {
      defaultUnit: 'mm',
    }),
    text('claimed_strand_unit', 'Unit of claimed_strand_diameter; mm when blank'),
    quantity('claimed_temperature', 'Temperature rating on the label', 'temperature', 'claimed_temperature_unit', {
      defaultUnit: 'C',
      label: true,
    }),
    text('claimed_temperature_unit', 'Unit of claimed_temperature; C when blank'),
    quantity(
      'claimed_ohms',
      'Resistance per length that the label claims, with its unit',
      'resistance per length',
      'claimed_ohms_unit',
    ),
    text('claimed_ohms_unit', 'Unit of claimed_ohms, when it is not in the same cell'),
    quantity(
      'claimed_mass',
      'Mass per length that the label claims, with its unit',
      'mass per length',
      'claimed_mass_unit',
    ),
    text('claimed_mass_unit', 'Unit of claimed_mass, when it is not in the same cell'),
    quantity(
      'claimed_outer_diameter',
      'Outer diameter that the label claims, with its unit',
      'length',
      'claimed_outer_diameter_unit',
      { defaultUnit: 'mm' },
    ),
    text(
      'claimed_outer_diameter_unit',
      'Unit of claimed_outer_diameter, when it is not in the same cell; mm when blank',
    ),
    text('printed_on_jacket', 'Words printed on the jacket, exactly'),
    text('jacket_colour', 'Colour of the jacket'),
    text('lot', 'Lot or date code'),
    text('shared_name', 'Name under which this same piece is measured in other trials too, which links them'),
    text('age', 'Age, or date of manufacture'),
    text('condition', 'Condition as received'),
    text('sold_by', 'How it is sold: by the foot, on a spool, in a kit'),
    text('stranding', 'How the strands are laid: bunched, rope-laid, solid'),
    text('note', 'Anything else'),
  ],
};
