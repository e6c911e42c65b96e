/** The figures on heating logs as a page of markdown: `node scripts/figuresCurrent.mjs` writes docs/figures-current.md from it. */
import { type LogsTold, TRUTHS, tellLogs } from './current.ts';

export interface CurrentEffort {
  firstSeed: number;
  logs: number;
}

export const FULL_CURRENT_EFFORT: CurrentEffort = { firstSeed: 80_000, logs: 200 };

const DRIFTS = [0, 0.1, 0.3];
const LENGTHS = [1, 2, 3, 4, 5];

const percent = (share: number, digits = 1): string =>
  Number.isNaN(share) ? '–' : `${(100 * share).toFixed(digits)} %`.replace('-', '−');

function rowOf(name: string, drift: number, lengths: number, t: LogsTold): string {
  const cells = [
    name,
    drift === 0 ? 'none' : `${drift} K`,
    String(lengths),
    `${t.answered}/${t.logs}`,
    t.answered === 0 ? '–' : `${t.covered}/${t.answered} (${percent(t.covered / t.answered)})`,
    percent(t.halfWidth),
    percent(t.bias, 2),
    String(t.oneForTwo),
  ];
  return `| ${cells.join(' | ')} |`;
}

function rows({ firstSeed, logs }: CurrentEffort): string[] {
  let seed = firstSeed;
  return TRUTHS.flatMap((truth) =>
    DRIFTS.flatMap((drift) =>
      LENGTHS.map((lengths) =>
        rowOf(truth.name, drift, lengths, tellLogs({ truth, lengths, drift }, { seed: seed++, logs })),
      ),
    ),
  );
}

/** The whole page. */
export function currentFiguresPage(effort: CurrentEffort): string {
  return `# Figures on heating from simulation

Written by \`node scripts/figuresCurrent.mjs\`; nothing on this page is typed by hand. First seed ${effort.firstSeed}, ${effort.logs} logs in each row.

Invented logs of 240 readings: a steady rise of 40 K, slowest time constant 900 s, scatter of 0.2 K in every reading, and drift that is
left after the surroundings were subtracted (it comes and goes within half the slowest time constant). Length counts in slowest time
constants. The thermometers' own limits are not in these figures; in findings they are added.

- *answered*: the others are refused as too short or too wide.
- *covered*: of those answered, the 95 % interval holds the true steady rise.
- *half-width* and *bias*: medians of those answered, as shares of the rise.
- *one for two*: answered as one time constant beyond doubt although there are two.

| truth | drift | length | answered | covered | half-width | bias | one for two |
| --- | --- | --- | --- | --- | --- | --- | --- |
${rows(effort).join('\n')}

Without drift the intervals hold more often than they promise: suppositions with drift stay in the mixture, because a log alone can hardly rule them
out. At three lengths of a curve with two time constants most logs are refused; those answered are the ones whose slow part came out
too fast, and they hold somewhat less often. From four lengths on this is gone.

What it cannot see: in the last rows of one and two lengths the log ends long after the fast part has settled, and a slow quarter of the rise looks
like drift of the surroundings. Half of those logs are answered, and the answer is too low. Nothing within such a log tells the two
apart; a steady room and a longer log do.
`;
}
