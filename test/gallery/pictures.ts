/** Every committed picture: what it is called and how it is made from the hand-written findings. */

import { failsOnMetal, headlineClaim, metalClaim, sizeClaim } from '../../src/findings/cableOutcome.ts';
import type { CableFindings } from '../../src/findings/schema.ts';
import { intervalAxis } from '../../src/report/intervalAxis.ts';
import { intervalColumn } from '../../src/report/intervalBar.ts';
import { metalKind } from '../../src/report/metalKind.ts';
import { markOfClaim, outcomeMark } from '../../src/report/outcomeMark.ts';
import { sectionDrawing } from '../../src/report/section/sectionDrawing.ts';
import { sectionInput } from '../../src/report/section/sectionInput.ts';
import { type RowCable, sectionRow } from '../../src/report/section/sectionRow.ts';
import { residualSpan, residualStrip, shareBar } from '../../src/report/sheetStrips.ts';
import { group, label, svgDocument } from '../../src/report/svg.ts';
import { assayTable } from '../../src/report/text/assayTable.ts';
import { darkTheme, lightTheme, paperTheme, type Theme } from '../../src/report/theme.ts';
import { measured } from '../fixtures/findings/build.ts';
import { harrowAndSedge, quill, rudeNames, saltmarsh, sixCables, tollgate, unmeasured } from '../fixtures/findings.ts';
import { ACROSS_PICTURES } from './acrossPictures.ts';
import { AMPS_PICTURES } from './ampsPictures.ts';
import { BEND_PICTURES } from './bendPictures.ts';
import { DEMO_PICTURES } from './demoReports.ts';
import { JACKET_PICTURES } from './jacketPictures.ts';
import { PLAN_PICTURES } from './planPictures.ts';
import { PUBLISH_PICTURES } from './publishPictures.ts';
import { STANDING_PICTURES } from './standingPictures.ts';

const compared = sixCables.cables.filter(({ role }) => role === 'compared');

function rowCable(cable: CableFindings): RowCable {
  const claim = headlineClaim(cable);
  const mark = claim === null ? null : markOfClaim(claim, cable.copper_share?.value ?? null);
  const note = failsOnMetal(cable) ? 'metal' : '';
  return { section: sectionInput(cable), outcome: mark === null ? null : { mark, word: mark.outcome, note } };
}

const row = (theme: Theme, width: number, cables = compared): string =>
  sectionRow(cables.map(rowCable), width, { theme }).svg;

const large = (cable: CableFindings): string =>
  sectionDrawing(sectionInput(cable), { scalePxPerMm: 30, theme: lightTheme, showTicks: true, weight: 1.5 }).svg;

function intervals(theme: Theme): string {
  const axis = intervalAxis(
    compared.map((cable) => cable.conductor_area),
    32.96,
    33.63,
  );
  if (axis === null) throw new Error('the six cables have areas');
  const rows = compared.map((cable) => ({ figure: cable.conductor_area, metal: metalKind(cable.metal_found) }));
  return intervalColumn(rows, axis, { width: 300, rowHeight: 36, theme, description: 'Metal area of six cables, mm²' })
    .svg;
}

/** The outcome marks of all claims at three sizes, each with its word. */
function marks(theme: Theme): string {
  const inputs = compared.flatMap((cable) =>
    [headlineClaim(cable), sizeClaim(cable), metalClaim(cable)].flatMap((claim) => {
      const mark = claim === null ? null : markOfClaim(claim, cable.copper_share?.value ?? null);
      return mark === null ? [] : [mark];
    }),
  );
  const drawn = [14, 24, 56].flatMap((size, line) =>
    inputs.map((input, i) => {
      const x = 10 + i * 74;
      const y = 10 + line * 50;
      const word = label(x, y + size + 14, input.outcome, { 'font-size': 11, fill: theme.ink2 });
      return group(
        {},
        group({ transform: `translate(${x} ${y})` }, outcomeMark(input, { size, theme, as: 'group' })),
        word,
      );
    }),
  );
  return svgDocument({ width: 20 + inputs.length * 74, height: 200, description: 'Outcome marks' }, ...drawn);
}

function strips(theme: Theme): string {
  const span = residualSpan(harrowAndSedge.residuals.map(({ residual }) => residual));
  const residuals = harrowAndSedge.residuals.map(({ residual }, i) =>
    group(
      { transform: `translate(10 ${10 + i * 28})` },
      residualStrip(residual, { width: 120, height: 28, theme, span, as: 'group' }),
    ),
  );
  const shares = quill.spread_from.map(({ share }, i) =>
    group(
      { transform: `translate(160 ${20 + i * 24})` },
      shareBar(share, { width: 112, height: 7, theme, as: 'group' }),
    ),
  );
  return svgDocument({ width: 290, height: 150, description: 'Residuals and shares' }, ...residuals, ...shares);
}

/** A cable of which little was read, among those of which enough was. */
const withWideFigures = {
  ...sixCables,
  cables: sixCables.cables.map((cable) =>
    cable.cable === saltmarsh.cable
      ? {
          ...cable,
          conductor_area: measured(31, 12.4, 'mm2', ['conductor_mass'], 'if copper'),
          copper_of_claim: measured(0.92, 0.37, '1', ['conductor_mass'], 'if copper'),
        }
      : cable,
  ),
};

/** File name → content. */
export const PICTURES: Readonly<Record<string, () => string>> = {
  'sections-light.svg': () => row(lightTheme, 1360),
  'sections-dark.svg': () => row(darkTheme, 1360),
  'sections-paper.svg': () => row(paperTheme, 640),
  'sections-phone.svg': () => row(lightTheme, 340),
  'sections-rude-names.svg': () => row(lightTheme, 1360, rudeNames.cables),
  'section-thick-jacket.svg': () => large(quill),
  'section-clad-aluminium.svg': () => large(tollgate),
  'section-mass-only.svg': () => large(saltmarsh),
  'section-nothing-known.svg': () => large(unmeasured),
  'intervals-light.svg': () => intervals(lightTheme),
  'intervals-dark.svg': () => intervals(darkTheme),
  'outcome-marks.svg': () => marks(lightTheme),
  'sheet-strips.svg': () => strips(lightTheme),
  'assay.txt': () => assayTable(sixCables),
  'assay-ascii.txt': () => assayTable(sixCables, { ascii: true }),
  'assay-narrow.txt': () => assayTable(sixCables, { width: 60 }),
  'assay-gauge.txt': () => assayTable(sixCables, { units: { area: 'awg' } }),
  'assay-wide.txt': () => assayTable(withWideFigures),
  'assay-rude-names.txt': () => assayTable(rudeNames),
  ...PLAN_PICTURES,
  ...PUBLISH_PICTURES,
  ...DEMO_PICTURES,
  ...BEND_PICTURES,
  ...JACKET_PICTURES,
  ...ACROSS_PICTURES,
  ...STANDING_PICTURES,
  ...AMPS_PICTURES,
};
