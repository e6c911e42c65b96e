/** What cables do under current, from hand-written figures. */
import { ampsStrip } from '../../src/report/amps/ampsStrip.ts';
import { fourWirePlot } from '../../src/report/amps/fourWirePlot.ts';
import { heatingCurve } from '../../src/report/amps/heatingCurve.ts';
import { lengthChart } from '../../src/report/amps/lengthChart.ts';
import { darkTheme, lightTheme, paperTheme } from '../../src/report/theme.ts';
import { bothWays, byLength, lost, tooShort, warming } from '../fixtures/findings/amps.ts';

const PLOT = { width: 400, height: 230 };

export const AMPS_PICTURES: Readonly<Record<string, () => string>> = {
  'amps-lost-light.svg': () => ampsStrip(lost, { width: 960, theme: lightTheme }),
  'amps-lost-phone-dark.svg': () => ampsStrip(lost, { width: 354, theme: darkTheme }),
  'amps-by-length.svg': () => lengthChart(byLength, { width: 520, height: 270, theme: lightTheme }),
  'amps-by-length-paper.svg': () => lengthChart(byLength, { width: 340, height: 270, theme: paperTheme }),
  'amps-heating.svg': () =>
    heatingCurve(
      { heating: warming, name: 'Sedge', steady: { value: 40, low: 38.6, high: 41.5 } },
      { ...PLOT, theme: lightTheme },
    ),
  'amps-heating-refused-dark.svg': () =>
    heatingCurve({ heating: tooShort, name: 'Sedge', steady: null }, { ...PLOT, theme: darkTheme }),
  'amps-four-wire.svg': () =>
    fourWirePlot({ reading: bothWays, resistance: 0.0008, emf: 0.0001 }, { ...PLOT, theme: lightTheme }),
};
