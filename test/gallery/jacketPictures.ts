/** What jackets are and last, from the hand-written findings. */
import { curveReach, enduranceCurve } from '../../src/report/jacket/enduranceCurve.ts';
import { lastingChart } from '../../src/report/jacket/lastingChart.ts';
import { lastingStrip } from '../../src/report/jacket/lastingStrip.ts';
import { shareRings } from '../../src/report/jacket/shareRings.ts';
import { traceReach, wallTrace } from '../../src/report/jacket/wallTrace.ts';
import { darkTheme, lightTheme, paperTheme } from '../../src/report/theme.ts';
import { coldBent, fourJackets, scraped } from '../fixtures/findings/jacket.ts';

const [sedge, quill] = fourJackets.cables as [(typeof fourJackets.cables)[0], (typeof fourJackets.cables)[0]];

const ringed = {
  shares: quill.shares,
  name: 'Quill',
  outerDiameter: 14.5,
  jacketColour: 'dark blue',
  metal: 'copper',
  copperShare: null,
} as const;

const curve = (place: number, theme: typeof lightTheme) =>
  enduranceCurve(scraped.cables[place]!, {
    width: 316,
    height: 168,
    theme,
    unit: 'strokes',
    most: curveReach(scraped.cables),
  });

export const JACKET_PICTURES: Readonly<Record<string, () => string>> = {
  'jacket-scrape-light.svg': () => lastingStrip(lastingChart(scraped), { width: 1080, theme: lightTheme }),
  'jacket-scrape-phone.svg': () => lastingStrip(lastingChart(scraped), { width: 354, theme: darkTheme }),
  'jacket-cold-bend-paper.svg': () => lastingStrip(lastingChart(coldBent), { width: 688, theme: paperTheme }),
  'jacket-curve-failed.svg': () => curve(0, lightTheme),
  'jacket-curve-survivors-dark.svg': () => curve(1, darkTheme),
  'jacket-wall-round.svg': () => wallTrace(sedge, { size: 196, theme: lightTheme, most: traceReach([sedge, quill]) }),
  'jacket-shares.svg': () => shareRings(ringed, { scalePxPerMm: 12, size: 196, theme: lightTheme }),
  'jacket-shares-unknown.svg': () =>
    shareRings({ ...ringed, shares: null }, { scalePxPerMm: 12, size: 196, theme: lightTheme }),
};
