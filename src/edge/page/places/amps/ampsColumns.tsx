import type { ComponentChildren } from 'preact';
import type { Findings, Measured } from '../../../../findings/schema.ts';
import type { CurrentCable } from '../../../../findings/shapes/current.ts';
import { figureText } from '../../../../report/figures.ts';
import { FigureOf, unitHead } from '../../parts/figure.tsx';
import type { CableColumn } from '../../parts/openingCables.tsx';
import { units } from '../../store/units.ts';

export type AmpsColumn = CableColumn<CurrentCable>;

const figure = (of: Measured | null): ComponentChildren | null =>
  of === null ? null : <FigureOf text={{ ...figureText(of, units.value), condition: '' }} unit={false} />;

const MINUTE = 60;
const FEET = 304.8;

/** mΩ/m → Ω per 1000 ft, as tables of wire have it. */
const perThousandFeet = (of: Measured): Measured => ({
  ...of,
  unit: 'ohm/kft',
  value: (of.value * FEET) / 1000,
  u: (of.u * FEET) / 1000,
  interval: [(of.interval[0] * FEET) / 1000, (of.interval[1] * FEET) / 1000],
});

const SET_BY = { 'own test': 'its own test', 'tests of the trial': 'tests here', nothing: 'the model' } as const;

/** The columns that have something in them for at least one cable. */
export function ampsColumns(cables: readonly CurrentCable[], findings: Findings): AmpsColumn[] {
  const ohmsOf = (c: CurrentCable) => findings.cables.find((f) => f.cable === c.cable)?.resistance_20C ?? null;
  const columns: AmpsColumn[] = [
    {
      id: 'ohms',
      head: 'At 20 °C',
      unit: unitHead('mohm/m', units.value),
      cell: (c) => figure(ohmsOf(c)),
    },
    {
      id: 'feet',
      head: 'Ω per',
      unit: '1000 ft',
      cell: (c) => {
        const ohms = ohmsOf(c);
        return ohms === null ? null : figure(perThousandFeet(ohms));
      },
    },
    { id: 'amps', head: 'Heated by', unit: 'A', cell: ({ heating }) => heating?.current_A.toFixed(0) ?? null },
    { id: 'rise', head: 'Ends at', unit: 'K above', cell: ({ heating }) => figure(heating?.steady_rise ?? null) },
    {
      id: 'minutes',
      head: 'Two thirds in',
      unit: 'min',
      cell: ({ heating }) => (heating === null ? null : (heating.time_constant_s / MINUTE).toFixed(0)),
    },
    { id: 'carries', head: 'Carries', unit: 'A', cell: ({ carrying }) => figure(carrying?.current_A ?? null) },
    {
      id: 'until',
      head: 'Until',
      unit: '°C',
      cell: ({ carrying }) =>
        carrying === null ? null : `${carrying.rating_C.toFixed(0)}${carrying.rating_assumed ? ', assumed' : ''}`,
    },
    {
      id: 'by',
      head: 'Heat set by',
      unit: '',
      cell: ({ carrying }) => (carrying === null ? null : SET_BY[carrying.calibrated_by]),
    },
  ];
  return columns.filter(({ cell }) => cables.some((cable) => cell(cable) !== null));
}
