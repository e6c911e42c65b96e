import type { ComponentChildren } from 'preact';
import type { Measured } from '../../../../findings/schema.ts';
import type { JacketCable } from '../../../../findings/shapes/jacket.ts';
import { figureText, percentParts } from '../../../../report/figures.ts';
import { FigureOf, unitHead } from '../../parts/figure.tsx';
import type { CableColumn } from '../../parts/openingCables.tsx';
import { units } from '../../store/units.ts';

export type JacketColumn = CableColumn<JacketCable>;

const figure = (of: Measured | null): ComponentChildren | null =>
  of === null ? null : <FigureOf text={figureText(of, units.value)} unit={false} />;

/** The columns that have something in them for at least one cable. */
export function jacketColumns(cables: readonly JacketCable[]): JacketColumn[] {
  const length = unitHead('mm', units.value);
  const columns: JacketColumn[] = [
    { id: 'wall', head: 'Wall', unit: length, cell: ({ wall }) => figure(wall?.mean ?? null) },
    { id: 'least', head: 'Least place', unit: length, cell: ({ wall }) => figure(wall?.least ?? null) },
    {
      id: 'even',
      head: 'Thinnest of',
      unit: 'thickest, %',
      cell: ({ concentricity }) =>
        concentricity === null ? null : <FigureOf text={percentParts(concentricity)} unit={false} />,
    },
    {
      id: 'readings',
      head: 'Readings',
      unit: '',
      cell: ({ wall_readings }) => (wall_readings === 0 ? null : wall_readings),
    },
    {
      id: 'mass',
      head: 'Jacket',
      unit: unitHead('g/m', units.value),
      cell: ({ mass_per_metre }) => figure(mass_per_metre),
    },
    { id: 'density', head: 'Density', unit: 'g/cm³', cell: ({ density }) => figure(density) },
  ];
  return columns.filter(({ cell }) => cables.some((cable) => cell(cable) !== null));
}
