import {
  failsOnMetal,
  headlineClaim,
  outcomeWords,
  saidClaim,
  sizeClaim,
  withoutClaim,
} from '../../../findings/cableOutcome.ts';
import type { CableFindings, Findings } from '../../../findings/schema.ts';
import { type FigureUnits, measuredText } from '../../figures.ts';
import { intervalAxis } from '../../intervalAxis.ts';
import { metalKind } from '../../metalKind.ts';
import { markOfClaim } from '../../outcomeMark.ts';
import { sectionInput } from '../../section/sectionInput.ts';
import { reach, sectionRadii } from '../../section/sectionRadii.ts';
import { commonScale, type RowCable, sectionRow } from '../../section/sectionRow.ts';
import { paperTheme } from '../../theme.ts';
import { nameChart } from '../pictures/nameChart.ts';
import { shareBars } from '../pictures/shareBars.ts';
import { type Block, paragraphs, type Section } from './blocks.ts';
import { bareCell, percentCell, unitOf } from './figureCells.ts';

/** Width of the text on paper: 170 mm at 96 px to the inch. */
export const TEXT_WIDTH = (170 / 25.4) * 96;
/** Twice true size on paper. */
const TWICE = (2 / 25.4) * 96;
const LEAST_COLUMN = 128;
const MARGIN = 20;

/** What is said of a cable first, in a word or two. */
export function outcomeOf(cable: CableFindings): string {
  const claim = saidClaim(cable);
  if (claim === null) return withoutClaim(cable);
  return `${outcomeWords(claim)}${failsOnMetal(cable) ? ', metal' : ''}`;
}

export function rowCable(cable: CableFindings): RowCable {
  const claim = headlineClaim(cable);
  const mark = claim === null ? null : markOfClaim(claim, cable.copper_share?.value ?? null);
  const note = failsOnMetal(cable) ? 'metal' : '';
  return { section: sectionInput(cable), outcome: mark === null ? null : { mark, word: mark.outcome, note } };
}

/** Compared cables first, then references; control pieces are spoken of apart. */
export const shownCables = ({ cables }: Findings): CableFindings[] => [
  ...cables.filter(({ role }) => role === 'compared'),
  ...cables.filter(({ role }) => role === 'reference'),
];

function faces(cables: readonly CableFindings[]): Block[] {
  const rows = cables.map(rowCable);
  const widest = Math.max(...rows.map(({ section }) => 2 * (reach(sectionRadii(section)) ?? 0)));
  const columns = Math.max(
    1,
    Math.min(rows.length, Math.floor(TEXT_WIDTH / Math.max(LEAST_COLUMN, widest * TWICE + MARGIN))),
  );
  // Cables so thick that twice their size leaves the paper are drawn at the largest whole scale that fits.
  const fits = widest * TWICE + MARGIN <= TEXT_WIDTH;
  const scale = fits ? TWICE : commonScale(rows, TEXT_WIDTH);
  const drawn = sectionRow(rows, TEXT_WIDTH, { theme: paperTheme, scalePxPerMm: scale, columns });
  const size = fits ? 'Cut faces at twice true size' : 'Cut faces at one scale';
  return [
    {
      kind: 'picture',
      svg: drawn.svg,
      width: drawn.width,
      height: drawn.height,
      description: drawn.description,
      caption: `${size}. Outer ring: the jacket at its measured wall. Solid disc: all the metal, as if cast in one piece. Dashed ring: the metal that the label claims. A bare gap between the two is metal that is not there; crossed ruling is what was not measured.`,
    },
  ];
}

const headed = (what: string, figures: Parameters<typeof unitOf>[0], units: FigureUnits): string => {
  const unit = unitOf(figures, units);
  return unit === '' ? what : `${what}, ${unit}`;
};

function table(cables: readonly CableFindings[], units: FigureUnits): Block {
  return {
    kind: 'table',
    caption: 'What was found. ± reaches the farther end of the interval that holds the true value 95 times in 100.',
    head: [
      'Cable',
      'Label says',
      'Copper, of the label’s',
      headed(
        'Metal area',
        cables.map((c) => c.conductor_area),
        units,
      ),
      headed(
        'Resistance at 20 °C',
        cables.map((c) => c.resistance_20C),
        units,
      ),
      'Metal found',
      'Outcome',
    ],
    sides: ['left', 'left', 'right', 'right', 'right', 'left', 'left'],
    rows: cables.map((c) => [
      c.role === 'reference' ? `${c.name} (reference)` : c.name,
      [c.label.size, c.label.metal].filter((text) => text !== '').join(', '),
      percentCell(c.copper_of_claim),
      bareCell(c.conductor_area, units),
      bareCell(c.resistance_20C, units),
      c.metal_found ?? 'not settled',
      outcomeOf(c),
    ]),
  };
}

function areas(cables: readonly CableFindings[]): Block[] {
  const limits = cables.map((c) =>
    [sizeClaim(c), headlineClaim(c)].find((one) => one?.unit === 'mm2' && one.required !== null),
  );
  const [first] = limits;
  const shared = first != null && limits.every((l) => l?.required === first.required && l?.nominal === first.nominal);
  const figures = cables.map((c) => c.conductor_area);
  const axis = intervalAxis(figures, shared ? first.required : null, shared ? first.nominal : null);
  if (axis === null || figures.every((f) => f === null)) return [];
  const rows = cables.map((c) => ({
    name: c.name,
    figure: c.conductor_area,
    metal: metalKind(c.metal_found),
    text: measuredText(c.conductor_area),
  }));
  const description = `Metal area with its interval: ${rows.map(({ name, text }) => `${name} ${text}`).join('; ')}.`;
  const drawn = nameChart(rows, axis, { width: TEXT_WIDTH, theme: paperTheme, description });
  const line = shared ? ' The line is the least area that the label’s size asks for.' : '';
  return [{ kind: 'picture', ...drawn, caption: `Metal area, mm², with the interval of each cable.${line}` }];
}

function shares(findings: Findings): Block[] {
  const rows = (findings.jacket?.cables ?? []).flatMap((c) => {
    const cable = findings.cables.find(({ cable: id }) => id === c.cable);
    if (c.shares === null || c.role === 'control' || !cable) return [];
    return [{ name: c.name, shares: c.shares, metal: metalKind(cable.metal_found), colour: cable.jacket_colour }];
  });
  if (rows.length === 0) return [];
  const drawn = shareBars(rows, { width: TEXT_WIDTH, theme: paperTheme });
  return [{ kind: 'picture', ...drawn, caption: 'Where each cut face goes: metal, air between the strands, jacket.' }];
}

/** The first pages: drawings, what was found, and what the tools said of plain copper. */
export function overviewSection(findings: Findings, units: FigureUnits): Section {
  const cables = shownCables(findings);
  return {
    id: 'found',
    title: 'What was found',
    blocks: [
      ...(cables.length > 0 ? faces(cables) : []),
      ...(cables.length > 0 ? [table(cables, units)] : []),
      ...areas(cables),
      ...shares(findings),
      ...paragraphs(...findings.control.map(({ sentence }) => sentence)),
    ],
  };
}
