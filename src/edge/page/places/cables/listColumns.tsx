import type { ComponentChildren } from 'preact';
import type { Measured } from '../../../../findings/schema.ts';
import type { ShelfCable } from '../../../../findings/shapes/shelf.ts';
import { moneyText } from '../../../../findings/standing/money.ts';
import { warmthText } from '../../../../report/across/warmthText.ts';
import type { DisplayUnits } from '../../../../units/display.ts';
import { Figure, unitHead } from '../../parts/figure.tsx';

/** One column of the list of cables. `id` is what the list is ordered by. */
export interface ListColumn {
  id: string;
  head: string;
  unit: string;
  words?: boolean;
  /** True where a block has room for it; it then stands with its unit. */
  inBlock?: boolean;
  cell: (line: ShelfCable) => ComponentChildren;
  /** Where it reads otherwise without a head over it. */
  inBlockCell?: (line: ShelfCable) => ComponentChildren;
}

const NOTHING = <span class="unknown">–</span>;
const figure = (of: Measured | null) => (of === null ? NOTHING : <Figure of={of} unit={false} />);

function price({ price_per_m: amount, currency }: ShelfCable, of: string) {
  if (amount === null) return NOTHING;
  return (
    <span class="figure">
      <b>{moneyText(amount)}</b> <span>{`${currency}${of}`}</span>
    </span>
  );
}

/** The columns, with the units chosen on the page in their heads. */
export function listColumns(units: DisplayUnits): ListColumn[] {
  const unit = (name: string) => unitHead(name, units);
  return [
    {
      id: 'size',
      head: 'Label',
      unit: 'size, metal',
      words: true,
      cell: ({ label }) => (
        <>
          <bdi class="one-line" dir="auto">
            {label.size || '–'}
          </bdi>
          <bdi class="note one-line" dir="auto">
            {label.metal}
          </bdi>
        </>
      ),
    },
    {
      id: 'area',
      head: 'Metal area',
      unit: unit('mm2'),
      inBlock: true,
      cell: (line) => figure(line.conductor_area),
      inBlockCell: ({ conductor_area: area }) => (area === null ? 'area not known' : <Figure of={area} />),
    },
    {
      id: 'metal',
      head: 'Metal found',
      unit: 'against the label',
      words: true,
      inBlock: true,
      cell: ({ metal_found: metal, outcome }) => (
        <>
          <span class="one-line">{metal ?? 'not settled'}</span>
          {outcome !== null && <span class="note one-line">{outcome}</span>}
        </>
      ),
    },
    {
      id: 'resistance',
      head: 'At 20 °C',
      unit: unit('mohm/m'),
      cell: (line) => figure(line.resistance_20C),
    },
    { id: 'stiffness', head: 'Stiffness', unit: 'N·m²', cell: (line) => figure(line.bending_stiffness) },
    { id: 'outer_diameter', head: 'Outer Ø', unit: unit('mm'), cell: (line) => figure(line.outer_diameter) },
    { id: 'wall', head: 'Wall', unit: unit('mm'), cell: (line) => figure(line.wall) },
    {
      id: 'price',
      head: 'Price',
      unit: 'a metre',
      inBlock: true,
      cell: (line) => price(line, ''),
      inBlockCell: (line) => price(line, ' a metre'),
    },
    {
      id: 'day',
      head: 'Read',
      unit: `day, °${units.temperature}`,
      cell: ({ day, temperature_C: range }) => (
        <>
          <span>{day ?? '–'}</span>
          {range !== null && <span class="note one-line">{warmthText(range, units.temperature)}</span>}
        </>
      ),
    },
  ];
}
