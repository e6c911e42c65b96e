/** Cables of several trials on one axis, and a lot over time; every figure invented. */
import { acrossOf } from '../../src/findings/across/across.ts';
import { linksOn } from '../../src/findings/across/links.ts';
import { lotsOverTime } from '../../src/findings/across/lots.ts';
import { quantityOf } from '../../src/findings/across/quantities.ts';
import { acrossChart } from '../../src/report/across/acrossChart.ts';
import { driftStrip } from '../../src/report/across/driftStrip.ts';
import { darkTheme, lightTheme, type Theme } from '../../src/report/theme.ts';
import { figure, line } from '../findings/across/lines.ts';

const wire = (trial: string, mm2: number) =>
  line(trial, 'House wire', { shared_name: 'house wire', role: 'control', conductor_area: figure(mm2, 'mm2', 0.003) });
const [link = null] = linksOn(
  [5.26, 5.29, 5.24, 5.27, 5.31].map((mm2, n) => wire(['spring', 'summer', 'autumn', 'winter', 'thaw'][n]!, mm2)),
);

const CHOSEN = [
  line('spring', 'Brackenfell Boot Run', { title: 'Spring trial', day: '2025-04-02', lot: '24-07' }),
  line('autumn', 'Tollgate Power Two', {
    title: 'Autumn trial',
    metal_found: 'copper-clad aluminium',
    conductor_area: figure(30.8, 'mm2', 0.012),
    temperature_C: [11, 14],
  }),
  line('autumn', 'Brackenfell Boot Run', {
    title: 'Autumn trial',
    day: '2026-10-03',
    lot: '24-07',
    conductor_area: figure(32.6, 'mm2', 0.005),
    temperature_C: [11, 14],
  }),
];

const chart = (width: number, theme: Theme, more: { linked: boolean; shift?: boolean }) =>
  acrossChart(
    acrossOf(CHOSEN, {
      quantity: quantityOf('area'),
      link: more.linked ? link : null,
      shift: more.shift ?? false,
      level: 0.95,
    }),
    { width, theme, units: {} },
  );

export const ACROSS_PICTURES: Readonly<Record<string, () => string>> = {
  'across-as-found-light.svg': () => chart(1080, lightTheme, { linked: false }),
  'across-widened-light.svg': () => chart(1080, lightTheme, { linked: true }),
  'across-shifted-phone-dark.svg': () => chart(354, darkTheme, { linked: true, shift: true }),
  'across-lot-light.svg': () => {
    const [lot] = lotsOverTime(CHOSEN, { quantity: quantityOf('area'), link: null, level: 0.95 });
    return driftStrip(lot!, { width: 300, theme: lightTheme });
  },
};
