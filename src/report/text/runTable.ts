import { cautionsFor, ESTIMATE_LINE } from '../../methods/current/cautions.ts';
import type { RunAnswer } from '../../methods/current/runCheck/answer.ts';
import type { Overload } from '../../methods/current/runCheck/overload.ts';
import type { RunQuestion } from '../../methods/current/runCheck/question.ts';
import type { RunCheck } from '../../methods/current/runCheck/runCheck.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import { noneFitsText } from '../runInTheWay.ts';
import { overloadCell, overloadSupposed, overloadText } from '../runOverload.ts';
import { answerText, betweenText, questionText, runSentence } from '../runWords.ts';
import { blockText, tableWidthFor } from './assayPage.ts';
import { type Planned, plannedRow, roomOf } from './cableTable.ts';
import { displayWidth, printable } from './displayWidth.ts';
import { ASCII, LINE_DRAWING } from './glyphs.ts';
import { tableHead } from './textTable.ts';
import { wrap } from './wrap.ts';

export interface RunTableOptions {
  width?: number;
  ascii?: boolean;
  /** What nobody stated and was taken as usual. */
  taken?: readonly string[];
  /** How long measured cables last under an overload that was asked about. */
  overloads?: readonly Overload[];
}

const LEAST_NAME = 10;
const WIDEST_NAME = 22;

interface RunColumn extends Planned<RunAnswer> {
  cell: (a: RunAnswer) => string;
}

const right = (head: string[], width: number, cell: (a: RunAnswer) => string): RunColumn => ({
  column: { head, width, side: 'right' },
  cell,
});

const amount = (x: number, decimals: number) => (Number.isFinite(x) ? x.toFixed(decimals) : '—');
/** A dash where nothing comes through. */
const fed = (a: RunAnswer, x: number, decimals: number) => (a.feeds === 'no' ? '—' : amount(x, decimals));

/** Columns in the order of what they are worth; the last ones go where the terminal is narrow. */
const FIGURES: readonly RunColumn[] = [
  right(['At the', 'load, V'], 7, (a) => fed(a, a.resting.atLoad.value, 2)),
  right(['Lost', '%'], 5, (a) => fed(a, 100 * a.drop.value, 1)),
  // Where the far end is not fed at all, all volts are lost on paper.
  right(['to', '%'], 5, (a) => fed(a, a.feeds === 'yes' ? 100 * a.drop.high : Number.NaN, 1)),
  right(['Heat', '°C'], 5, (a) => fed(a, a.hottest.value - ZERO_CELSIUS, 0)),
  right(['of', '°C'], 4, (a) => amount(a.cable.rating - ZERO_CELSIUS, 0)),
  right(['Runs'], 4, (a) => a.parallel?.toString() ?? 'none'),
  right(['Fuse', 'each, A'], 7, (a) => a.fuseEach?.rating?.toString() ?? 'none'),
  right(['Mass', 'kg'], 5, (a) => (a.mass === null ? '—' : a.mass.toFixed(2))),
  right(['Mean', 'W'], 5, (a) => fed(a, a.resting.watts.value, 1)),
];

/** Right of heat and its rating. */
const AFTER_RATING = 5;

const lastsColumn = (overloads: readonly Overload[]): RunColumn =>
  right(['Over-', 'load'], 10, (a) => {
    const found = overloads.find((o) => o.cable.id === a.cable.id);
    return found === undefined ? '—' : overloadCell(found);
  });

/**
 * A run check for a terminal: the question, what does, a row for each cable with nominal sizes below the measured ones, what to know of
 * each, and the cautions. No line is wider than `width`. Ends with a line break.
 */
export function runTable(q: RunQuestion, check: RunCheck, options: RunTableOptions = {}): string {
  const width = tableWidthFor(options.width);
  const glyphs = options.ascii ? ASCII : LINE_DRAWING;
  const shown = (text: string) => glyphs.write(printable(text)).trim();
  const lines = (text: string) => (text === '' ? [] : wrap(shown(text), width));
  if (check.problems.length > 0) return `${check.problems.flatMap(lines).join('\n')}\n`;
  const longest = Math.max(LEAST_NAME, ...check.answers.map((a) => displayWidth(shown(a.cable.name))));
  const nameWidth = Math.min(longest, WIDEST_NAME);
  const overloads = options.overloads ?? [];
  const figures = [...FIGURES];
  if (overloads.length > 0) figures.splice(AFTER_RATING, 0, lastsColumn(overloads));
  while (nameWidth + roomOf(figures) > width) figures.pop();
  const name: RunColumn = {
    column: { head: ['Cable'], width: nameWidth, side: 'left', cut: true },
    cell: (a) => a.cable.name,
  };
  const plan: RunColumn[] = [name, ...figures].map(({ column, cell }) => ({
    column: { ...column, head: column.head.map(shown) },
    cell: (a) => shown(cell(a)),
  }));
  const columns = plan.map(({ column }) => column);
  const row = (a: RunAnswer) => plannedRow(plan, a, glyphs);
  const measured = check.answers.filter((a) => a.cable.measured);
  const nominal = check.answers.filter((a) => !a.cable.measured);
  const notes = measured.flatMap((a) => lines(noteText(a)));
  const whys = nominal.flatMap((a) => lines(noneFitsText(a)));
  const blocks = [
    lines(questionText(q, options.taken)),
    lines(runSentence(q, check)),
    [
      ...tableHead(columns, glyphs.rule),
      ...measured.flatMap(row),
      ...(nominal.length > 0 && measured.length > 0 ? [shown('Nominal sizes, for reference')] : []),
      ...nominal.flatMap(row),
    ],
    notes,
    whys,
    overloads.length === 0
      ? []
      : [
          ...overloads.flatMap((o) => lines(`${o.cable.name} ${overloadText(o)}`)),
          ...lines(overloadSupposed(q, { stated: true, all: true })),
        ],
    lines(
      'Volts, lost and heat are of one run at the peak of the load, from the supply at rest unless charging loses more; “to” is the far end of every doubt together, a dash where the load may not be fed there; mean W is lost over the whole duty. Runs: how many side by side meet volts and heat; fuse in each of them, and mass of all of them.',
    ),
    [...lines(ESTIMATE_LINE), ...cautionsOf(measured).flatMap((c) => lines(`- ${c}`))],
  ];
  return blockText(blocks);
}

const cautionsOf = (measured: readonly RunAnswer[]): string[] =>
  cautionsFor(
    'run check',
    'fuse',
    'terminals',
    ...(measured.some((a) => /aluminium/.test(a.cable.heated.metal.name)) ? (['clad aluminium'] as const) : []),
  );

/** What to know of one measured cable: outcome, current it carries, fuse. */
function noteText(a: RunAnswer): string {
  const rating = a.cable.ratingAssumed ? ' (no rating stated: the lowest usual one was taken)' : '';
  const cost = a.cost
    ? ` ${a.parallel === 1 ? 'It costs' : 'They cost'} ${a.cost.amount.toFixed(2)}${a.cost.currency ? ` ${a.cost.currency}` : ''}.`
    : '';
  if (a.tooHot) return answerText(a);
  return `${answerText(a)}${cost} One run carries ${betweenText(a.carrying, 0)} A there${rating}.`;
}
