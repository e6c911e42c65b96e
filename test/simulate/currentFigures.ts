/** The figures on heating logs as a page of markdown: `node scripts/figuresCurrent.mjs` writes docs/figures-current.md from it. */
import { DRIFT_LASTS, type LogSetup, type LogsTold, TRUTHS, tellLogs } from './current.ts';

export interface CurrentEffort {
  firstSeed: number;
  logs: number;
}

export const FULL_CURRENT_EFFORT: CurrentEffort = { firstSeed: 80_000, logs: 100 };

const DRIFTS = [0, 0.1, 0.3];
const LENGTHS = [1, 2, 3, 4, 5];

const percent = (share: number, digits = 1): string =>
  Number.isNaN(share) ? '–' : `${(100 * share).toFixed(digits)} %`.replace('-', '−');

const kelvin = (drift: number): string => (drift === 0 ? 'none' : `${drift} K`);
const held = (covered: number, answered: number): string =>
  answered === 0 ? '–' : `${covered}/${answered} (${percent(covered / answered)})`;

interface Told {
  setup: LogSetup;
  told: LogsTold;
}

/** Every truth, drift and length; and one time constant with drift that lasts three times as long. */
function tellAll({ firstSeed, logs }: CurrentEffort): { usual: Told[]; slower: Told[] } {
  let seed = firstSeed;
  const tell = (setup: LogSetup): Told => ({ setup, told: tellLogs(setup, { seed: seed++, logs }) });
  const usual = TRUTHS.flatMap((truth) =>
    DRIFTS.flatMap((drift) => LENGTHS.map((lengths) => tell({ truth, lengths, drift }))),
  );
  const slower = [0.1, 0.3].flatMap((drift) =>
    [3, 5].map((lengths) => tell({ truth: TRUTHS[0], lengths, drift, driftLasts: 3 * DRIFT_LASTS })),
  );
  return { usual, slower };
}

function rowOf({ setup, told: t }: Told): string {
  const cells = [
    setup.truth.name,
    kelvin(setup.drift),
    String(setup.lengths),
    `${t.answered}/${t.logs}`,
    held(t.covered, t.answered),
    percent(t.halfWidth),
    percent(t.bias, 2),
    String(t.oneForTwo),
  ];
  return `| ${cells.join(' | ')} |`;
}

/** One drift over all truths, from three slowest time constants on. */
function togetherRow(drift: number, all: readonly Told[]): string {
  const some = all.filter(({ setup }) => setup.drift === drift && setup.lengths >= 3).map(({ told }) => told);
  const sum = (of: (t: LogsTold) => number) => some.reduce((total, t) => total + of(t), 0);
  const shares = some.filter((t) => t.answered > 0).map((t) => t.covered / t.answered);
  const widest = Math.max(...some.filter((t) => t.answered > 0).map((t) => t.halfWidth));
  return `| ${kelvin(drift)} | ${held(
    sum((t) => t.covered),
    sum((t) => t.answered),
  )} | ${percent(Math.min(...shares))} to ${percent(Math.max(...shares))} | ${percent(widest)} |`;
}

const ROW_HEAD = `| truth | drift | length | answered | covered | half-width | bias | one for two |
| --- | --- | --- | --- | --- | --- | --- | --- |`;

/** The whole page. */
export function currentFiguresPage(effort: CurrentEffort): string {
  const { usual, slower } = tellAll(effort);
  return `# Figures on heating from simulation

Written by \`node scripts/figuresCurrent.mjs\`; nothing on this page is typed by hand. First seed ${effort.firstSeed}, ${effort.logs} logs in each row.

Invented logs of 240 readings: a steady rise of 40 K, slowest time constant 900 s, scatter of 0.2 K in every reading, and drift that is
left after the surroundings were subtracted (it comes and goes within half the slowest time constant). Length counts in slowest time
constants. The thermometers' own limits are not in these figures; in findings they are added.

- *answered*: the others are refused as too short or too wide.
- *covered*: of those answered, the 95 % interval holds the true steady rise.
- *half-width* and *bias*: medians of those answered, as shares of the rise.
- *one for two*: answered as one time constant beyond doubt although there are two.

From three slowest time constants on, all three truths together (a single row of 100 logs is sure to about 2 points at 95 %, one of 40 to 3):

| drift | covered | by row | widest median half-width |
| --- | --- | --- | --- |
${DRIFTS.map((drift) => togetherRow(drift, usual)).join('\n')}

Row by row:

${ROW_HEAD}
${usual.map(rowOf).join('\n')}

At three lengths of a curve with two time constants most logs are refused; those answered are the ones whose slow part came out
too fast, and they hold somewhat less often. From four lengths on this is gone.

The same with drift that comes and goes within one and a half slowest time constants:

${ROW_HEAD}
${slower.map(rowOf).join('\n')}

Slow drift no larger than the scatter bends as a heating curve bends, and the fit takes it for one: there the interval is too narrow. Wider
intervals for every log would hold it; they were tried, and without drift they then held every single log, five times in a hundred more than they
promise. What is missed so is a few tenths of a kelvin, less than a usual thermometer's own limit, which findings add.

What it cannot see: in the last rows of one and two lengths the log ends long after the fast part has settled, and a slow quarter of the rise looks
like drift of the surroundings. Up to two in five of those logs are answered, and the answer is too low. Nothing within such a log tells the two
apart; a steady room and a longer log do.
`;
}
