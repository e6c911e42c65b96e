/** The figures on endurance as a page of markdown: `node scripts/figuresJacket.mjs` writes docs/figures-jacket.md from it. */
import { powerOfPieces } from '../../src/methods/jacket/endurance/planPieces.ts';
import { tellCommonMedians, tellDifferences, tellMedians, tellShapes, tellShownMedians } from './endurance.ts';

export interface JacketEffort {
  firstSeed: number;
  runs: number;
}

export const FULL_JACKET_EFFORT: JacketEffort = { firstSeed: 81_000, runs: 10_000 };

const PIECES = [3, 4, 5, 6] as const;
const SHAPES = [1.5, 2.5, 4] as const;
const POWER_PIECES = [3, 4, 5, 6, 8, 10, 12] as const;
const THREEFOLD = [3, 1] as const;
const PAIR = [1, 1] as const;
const FAMILY = [1, 1, 1, 1] as const;
const FAMILY_WITH_ONE = [3, 1, 1, 1] as const;

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
const line = (cells: readonly (string | number)[]) => `| ${cells.join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]) =>
  [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');

/** Every row has draws of its own. */
const seedOf = ({ firstSeed, runs }: JacketEffort, row: number) => firstSeed + row * runs;

function medianRows(effort: JacketEffort) {
  const { runs } = effort;
  let row = 0;
  return [0, 0.3].flatMap((survivors) =>
    PIECES.map((pieces) => [
      pieces,
      survivors === 0 ? 'none' : '30 %',
      ...SHAPES.map((shape) => {
        const told = tellMedians({ firstSeed: seedOf(effort, row++), runs, pieces, shape, survivors });
        return `${percent(told.covered / told.answered)} of ${told.answered}, ×÷ ${told.factor.toFixed(2)}`;
      }),
    ]),
  );
}

function fieldRows(effort: JacketEffort) {
  const runs = Math.ceil(effort.runs / 4);
  let row = 100;
  return [0, 0.3, 0.6].flatMap((survivors) =>
    PIECES.map((pieces) => {
      const o = { runs, pieces, shape: 2.5, survivors, cables: 4 };
      const common = tellCommonMedians({ ...o, firstSeed: seedOf(effort, row++) });
      const shown = tellShownMedians({ ...o, firstSeed: seedOf(effort, row++) });
      return [
        pieces,
        survivors === 0 ? 'none' : percent(survivors),
        `${percent(common.covered / common.answered)}, ×÷ ${common.factor.toFixed(2)}`,
        `${percent(shown.covered / shown.answered)}, ×÷ ${shown.factor.toFixed(2)}`,
      ];
    }),
  );
}

function differenceRows(effort: JacketEffort) {
  const { runs } = effort;
  let row = 200;
  return PIECES.flatMap((pieces) =>
    SHAPES.map((shape) => {
      const told = (scales: readonly number[], by?: 'exact') =>
        tellDifferences({ firstSeed: seedOf(effort, row++), runs, pieces, shape, scales, by });
      const found = (scales: readonly number[]) => {
        const t = told(scales);
        return percent(t.found / t.unequal);
      };
      const exact = told(THREEFOLD, 'exact');
      return [
        pieces,
        shape,
        percent(told(PAIR).falsely / runs),
        percent(told(FAMILY).falsely / runs),
        found(THREEFOLD),
        found(FAMILY_WITH_ONE),
        percent(exact.found / exact.unequal),
      ];
    }),
  );
}

function shapeRows(effort: JacketEffort) {
  const { runs } = effort;
  let row = 400;
  return (
    [
      [2, 2],
      [2, 2, 2, 2],
      [2, 3],
      [1.5, 4],
    ] as const
  ).flatMap((shapes) =>
    PIECES.map((pieces) => {
      const told = tellShapes({ firstSeed: seedOf(effort, row++), runs, pieces, shapes });
      return [shapes.join(', '), pieces, percent(told.warned / runs), percent(told.falsely / runs)];
    }),
  );
}

function lookRows(effort: JacketEffort) {
  const { runs } = effort;
  let row = 500;
  return [0.1, 0.2, 0.33].map((looks) => {
    const o = { runs, pieces: 5, shape: 2.5, looks };
    const median = tellMedians({ ...o, firstSeed: seedOf(effort, row++) });
    const equal = tellDifferences({ ...o, firstSeed: seedOf(effort, row++), scales: PAIR });
    return [`${(100 * looks).toFixed(0)} %`, percent(median.covered / median.answered), percent(equal.falsely / runs)];
  });
}

/** Power against the true ratio of medians for two cables: what a plan is made from. */
function powerRows(effort: JacketEffort) {
  return SHAPES.flatMap((shape) =>
    [1.5, 2, 3].map((ratio) => [
      shape,
      ratio,
      ...POWER_PIECES.map((pieces) =>
        percent(powerOfPieces(pieces, { ratio, shape, level: 0.95, pairs: 1 }, effort.runs, '0f1e2d3c4b5a6978')),
      ),
    ]),
  );
}

/** The whole page. */
export function jacketFiguresPage(effort: JacketEffort): string {
  return `# Figures on endurance from simulation

Written by \`node scripts/figuresJacket.mjs\`; nothing on this page is typed by hand. First seed ${effort.firstSeed},
${effort.runs} runs in each row unless said otherwise. Pieces wear through by a Weibull law; a shape of 1.5 scatters widely, 4 little. Intervals
claim 95 %, differences are read at 5 %.

## Median of one cable by its own shape

How often the interval holds the true median, of the samples with enough failures for a shape (three, or two of three pieces), and by how
much the usual interval multiplies and divides the estimate. *Survivors*: share of pieces that the end of the test leaves whole.

${table(['pieces', 'survivors', ...SHAPES.map((s) => `shape ${s}`)], medianRows(effort))}

## Median among four cables, shape 2.5

*Common shape*: one shape for all four. *As shown*: the interval that the findings show first, by the cable's own shape with three failures or
more, else by the common one, else off the curve. ${Math.ceil(effort.runs / 4)} runs.

${table(['pieces', 'survivors', 'common shape', 'as shown'], fieldRows(effort))}

## Differences between cables

Pairs by the calibrated likelihood ratio under one shape, with Holm's correction among four. *Falsely*: equal cables said to differ, any pair of
them. *Found*: a cable that lasts three times as long told from another, in a pair and among four. *Exact*: the same pair by the log-rank test over
all ways to deal the pieces, which at three pieces cannot come below p = 0.1.

${table(['pieces', 'shape', 'falsely, pair', 'falsely, any of four', 'found, pair', 'found, among four', 'found, pair, exact'], differenceRows(effort))}

## Cables of different shape

Equal medians. *Warned*: the test of one shape speaks against it. *Falsely*: the medians of the first two are said to differ.

${table(['shapes', 'pieces', 'warned', 'falsely'], shapeRows(effort))}

## Looked at every so often

Five pieces of shape 2.5, looked at every so much of the median.

${table(['looks', 'median covered', 'falsely, pair'], lookRows(effort))}

## How many pieces

How often two cables are told apart by pieces of each, true ratio of their medians and shape, all run until they fail.

${table(['shape', 'ratio', ...POWER_PIECES.map((n) => `${n} pieces`)], powerRows(effort))}
`;
}
