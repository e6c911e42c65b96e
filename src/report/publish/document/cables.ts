import { outcomeWords } from '../../../findings/cableOutcome.ts';
import type { CableFindings, Findings, Measured } from '../../../findings/schema.ts';
import type { Cable, Trial } from '../../../trial/trial.ts';
import { countText, type FigureUnits, UNKNOWN } from '../../figures.ts';
import type { Block, Cell, Section } from './blocks.ts';
import { paragraphs } from './blocks.ts';
import { figureCell, intervalCell, percentCell } from './figureCells.ts';
import { shownCables } from './overview.ts';

type FigureRow = [what: string, cell: Cell, interval: string, from: string];

/** Shorter words than the quantity's own, where many figures rest on it. */
const SHORTLY: Readonly<Record<string, string>> = { conductor_mass: 'mass', resistance: 'ohms' };
const words = (from: readonly string[]): string =>
  from.map((quantity) => SHORTLY[quantity] ?? quantity.replaceAll('_', ' ')).join(', ');

/** Every figure of one cable, each with its interval and the readings that it rests on. */
export function figureRows(c: CableFindings, units: FigureUnits): FigureRow[] {
  const plain = (what: string, figure: Measured | null): FigureRow[] =>
    figure ? [[what, figureCell(figure, units), intervalCell(figure), words(figure.from)]] : [];
  const share = (what: string, figure: Measured | null): FigureRow[] =>
    figure ? [[what, percentCell(figure), `${intervalCell(figure, 100)} %`, words(figure.from)]] : [];
  const count = (what: string, figure: Measured | null): FigureRow[] =>
    figure ? [[what, countText(figure), intervalCell(figure), words(figure.from)]] : [];
  return [
    ...share('Copper, of what is claimed', c.copper_of_claim),
    ...share('Metal, of the area claimed', c.metal_of_claim),
    ...plain('Metal area', c.conductor_area),
    ...plain('Resistance at 20 °C', c.resistance_20C),
    ...plain('Mass per length times resistance per length', c.mass_resistivity),
    ...plain('Mass of the conductor per length', c.mass_per_metre),
    ...share('Copper, of the metal’s volume', c.copper_share),
    ...plain('Density of the metal', c.density),
    ...plain('Lay factor', c.lay_factor),
    ...count('Strands', c.strand_count),
    ...plain('Strand diameter', c.strand_diameter),
    ...plain('Bundle of strands, across', c.bundle_diameter),
    ...plain('Outer diameter', c.outer_diameter),
    ...plain('Wall of the jacket, mean', c.wall?.mean ?? null),
    ...plain('Wall of the jacket, least', c.wall?.least ?? null),
    ...plain('Wall, least over greatest', c.wall?.concentricity ?? null),
    ...share('Metal, of the whole cut face', c.metal_of_section),
  ];
}

function claimsTable(c: CableFindings): Block[] {
  if (c.claims.length === 0) return [];
  return [
    {
      kind: 'table',
      caption: `What the label of ${c.name} can mean, and what was found. “Meets” is said from 97.5 % on, “falls short” up to 2.5 %.`,
      head: ['Reading of the label', 'asks', 'found', 'chance met', 'outcome'],
      sides: ['left', 'left', 'right', 'right', 'left'],
      rows: c.claims.map((claim) => [
        claim.of_label ? claim.reading : `${claim.reading} (not the label’s own)`,
        claim.asks,
        claim.found?.unit === '1' ? countText(claim.found) : figureCell(claim.found),
        claim.probability_met === null ? UNKNOWN : percentOf(claim.probability_met),
        outcomeWords(claim),
      ]),
    },
  ];
}

const percentOf = (share: number): string => {
  if (share > 0.9995) return 'over 99.9 %';
  return share < 0.0005 ? 'under 0.1 %' : `${(100 * share).toFixed(1)} %`;
};

function figuresTable(c: CableFindings, units: FigureUnits): Block[] {
  const rows = figureRows(c, units);
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      caption: `Every figure of ${c.name}, its interval, and the readings that it rests on.`,
      head: ['Figure', 'found', 'interval', 'from'],
      sides: ['left', 'right', 'right', 'left'],
      rows,
    },
  ];
}

/** Where, when and how this piece was bought, as far as it was noted. */
export function boughtText({ row, boughtLength }: Cable): string {
  const cell = (name: string) => (row[name] ?? '').trim();
  const parts = [
    cell('bought_from') === '' ? '' : `from ${cell('bought_from')}`,
    cell('bought_on') === '' ? '' : `on ${cell('bought_on')}`,
    boughtLength === null ? '' : `${Number(boughtLength.toPrecision(4))} m`,
    cell('lot') === '' ? '' : `lot ${cell('lot')}`,
    cell('age') === '' ? '' : cell('age'),
    cell('condition') === '' ? '' : `condition ${cell('condition')}`,
  ].filter((part) => part !== '');
  const free = /^(yes|true|1)$/i.test(cell('supplied_free'));
  const how = free ? 'Supplied free of charge' : 'Bought';
  return parts.length === 0 ? (free ? `${how}.` : '') : `${how} ${parts.join(', ')}.`;
}

/** Smaller shares of a ± are not worth a reader's time. */
const NAMED_SHARE = 0.03;

function cableBlocks(c: CableFindings, cable: Cable | undefined, units: FigureUnits): Block[] {
  const wrong = c.tool_errors.map(({ text }) => text);
  return [
    { kind: 'heading', text: c.name },
    ...paragraphs(c.sentence, cable && boughtText(cable), ...saidOf(c)),
    ...claimsTable(c),
    ...figuresTable(c, units),
    ...paragraphs(...restsOn(c)),
    ...(wrong.length > 0
      ? [
          { kind: 'paragraph', text: 'How wrong would the tools have to be for the outcome to change?' } as const,
          { kind: 'list', items: wrong } as const,
        ]
      : []),
    ...paragraphs(...openThings(c)),
  ];
}

/** The same where a document is about one cable alone: its sentence and what would change it stand elsewhere. */
export function oneCableBlocks(c: CableFindings, { cables }: Pick<Trial, 'cables'>): Block[] {
  const cable = cables.find((one) => one.cable === c.cable);
  const said = [cable && boughtText(cable), ...saidOf(c)].filter((text) => text);
  return [
    ...paragraphs(said.join(' ')),
    ...claimsTable(c),
    ...figuresTable(c, {}),
    ...paragraphs([...restsOn(c), ...openThings(c)].filter((text) => text !== '').join(' ')),
  ];
}

const saidOf = (c: CableFindings): string[] => [
  c.strands_sentence ?? '',
  c.effective_gauge_text && c.conductor_area ? `As a gauge: ${c.effective_gauge_text}.` : '',
  c.conducts_like ? `It ${c.conducts_like}.` : '',
];

const openThings = (c: CableFindings): string[] => [
  c.assumed.length > 0 ? `Assumed, because nobody stated it: ${c.assumed.join('; ')}.` : '',
  c.missing.length > 0 ? `Not measured: ${c.missing.join('; ')}.` : '',
];

/** Which metals its readings leave open, what its ± is made of, and whether they agree. */
function restsOn(c: CableFindings): string[] {
  const chances = Object.entries(c.metal)
    .filter(([, chance]) => chance >= 0.005)
    .sort((a, b) => b[1] - a[1])
    .map(([metal, chance]) => `${metal} ${percentOf(chance)}`);
  const named = c.spread_from
    .filter(({ share }) => share >= NAMED_SHARE)
    .map(({ label, share }) => ({ label, percent: Math.round(100 * share) }));
  const rest = 100 - named.reduce((sum, { percent }) => sum + percent, 0);
  const made = [
    ...named.map(({ label, percent }) => `${label} ${percent} %`),
    ...(rest > 0 && named.length < c.spread_from.length
      ? [`and everything under ${100 * NAMED_SHARE} % together ${rest} %`]
      : []),
  ];
  return [
    chances.length > 1 ? `Chance of each metal: ${chances.join(', ')}.` : '',
    c.spread_from.length > 0 ? `What the ± of the area is made of: ${made.join(', ')}.` : '',
    c.consistency?.sentence ?? '',
  ];
}

/** Each cable with all of its figures. */
export function cablesSection(findings: Findings, trial: Trial, units: FigureUnits): Section {
  const byId = new Map(trial.cables.map((c) => [c.cable, c]));
  return {
    id: 'cables',
    title: 'Cable by cable',
    blocks: shownCables(findings).flatMap((c) => cableBlocks(c, byId.get(c.cable), units)),
  };
}
