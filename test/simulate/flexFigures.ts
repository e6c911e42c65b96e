/** The figures on bending as a page of markdown: `node scripts/figuresBend.mjs` writes docs/figures-bend.md from it. */
import { median } from '../../src/numerics/describe.ts';
import { type DroopJudged, type Droops, drawDroops, judgeFields } from './flex.ts';

export interface BendEffort {
  firstSeed: number;
  trials: number;
  cablesEach: number;
  fields: number;
}

export const FULL_BEND_EFFORT: BendEffort = { firstSeed: 61_000, trials: 400, cablesEach: 3, fields: 2000 };

export interface DroopsTold {
  cables: number;
  answered: number;
  covered: number;
  medianHalfWidth: number;
  ninetiethHalfWidth: number;
  medianBias: number;
  flagged: number;
}

/** Pools many trials of droops: of the answered ones, how many intervals hold the truth, and how wide they are. */
export function tellDroops(o: Omit<Droops, 'seed' | 'cables'>, effort: BendEffort): DroopsTold {
  const all: DroopJudged[] = [];
  for (let t = 0; t < effort.trials; t++)
    all.push(...drawDroops({ ...o, seed: effort.firstSeed + t, cables: effort.cablesEach }));
  const answered = all.flatMap(({ truth, found }) =>
    found.bending_stiffness ? [{ truth, m: found.bending_stiffness, droop: found.droops[0] }] : [],
  );
  const half = answered.map(({ m }) => (m.interval[1] - m.interval[0]) / 2 / m.value).sort((a, b) => a - b);
  return {
    cables: all.length,
    answered: answered.length,
    covered: answered.filter(({ truth, m }) => m.interval[0] <= truth && truth <= m.interval[1]).length,
    medianHalfWidth: median(half),
    ninetiethHalfWidth: half[Math.floor(0.9 * half.length)],
    medianBias: median(answered.map(({ truth, m }) => m.value / truth - 1)),
    flagged: answered.filter(({ droop }) => Math.abs(droop.set_of_piece ?? 0) > 0.12).length,
  };
}

const percent = (share: number, digits = 1) => `${(100 * share).toFixed(digits)} %`;

const DROOPS: readonly { name: string; o: Omit<Droops, 'seed' | 'cables'> }[] = [
  { name: 'advised overhang, straight pieces', o: { overhang: 'advised', set: 0 } },
  { name: 'advised overhang, set up to ±10 % of it', o: { overhang: 'advised', set: 0.1 } },
  { name: 'advised overhang, set up to ±20 % of it', o: { overhang: 'advised', set: 0.2 } },
  { name: 'any overhang from 100 to 600 mm, straight', o: { overhang: 'any', set: 0 } },
  { name: '300 mm for every cable, straight', o: { overhang: '300 mm', set: 0 } },
];

const FIELDS: readonly { cables: number; judges: number; spread: number }[] = [
  { cables: 6, judges: 1, spread: 1.3 },
  { cables: 6, judges: 3, spread: 1.3 },
  { cables: 8, judges: 3, spread: 0.7 },
  { cables: 8, judges: 3, spread: 1.3 },
  { cables: 8, judges: 3, spread: 2 },
  { cables: 8, judges: 6, spread: 1.3 },
];

function droopRows(effort: BendEffort): string[] {
  return DROOPS.map(({ name, o }) => {
    const t = tellDroops(o, effort);
    const cells = [
      name,
      `${t.answered}/${t.cables}`,
      `${t.covered}/${t.answered} (${percent(t.covered / t.answered)})`,
      percent(t.medianHalfWidth),
      percent(t.ninetiethHalfWidth),
      percent(t.medianBias, 2).replace('-', '−'),
      String(t.flagged),
    ];
    return `| ${cells.join(' | ')} |`;
  });
}

function fieldRows(effort: BendEffort): string[] {
  return FIELDS.map((o) => {
    const t = judgeFields({ ...o, firstSeed: effort.firstSeed + 1_000_000, fields: effort.fields });
    const cells = [
      `${o.cables}, ${o.judges}, ${o.spread}`,
      percent(t.bestInBand1),
      percent(t.equalParted),
      percent(t.bestSetHolds),
      t.bestSetSize.toFixed(1),
      t.bands.toFixed(1),
      t.sizeOfBand1.toFixed(1),
    ];
    return `| ${cells.join(' | ')} |`;
  });
}

/** The whole page. */
export function bendFiguresPage(effort: BendEffort): string {
  return `# Figures on bending from simulation

Written by \`node scripts/figuresBend.mjs\`; nothing on this page is typed by hand. First seed ${effort.firstSeed}.

## Stiffness from a droop

${effort.trials} trials of ${effort.cablesEach} invented cables in each row: EI from 0.005 to 2 N·m² and weight from 2 to 15 N/m, both
evenly by ratio. Overhang and drop are read three times each way up, by two rules of ±1 mm that are each wrong by one steady
amount in a whole trial; the weight is known to ±0.5 %. The advised overhang is 1.82 bending lengths, within 100 to 600 mm.

- *answered*: the droop lies where a rule settles it; the others are refused with the overhang to use.
- *covered*: the 95 % interval holds the true stiffness.
- *half-width*: half the interval over the estimate, of those answered.
- *bias*: median of estimate over truth, less 1.
- *flagged*: a set of more than 12 % of the overhang was found.

| droops | answered | covered | half-width, median | half-width, 90th of 100 | bias | flagged |
| --- | --- | --- | --- | --- | --- | --- |
${droopRows(effort).join('\n')}

The cables of one trial share their rules, so they are right or wrong together, and the share covered of so few trials scatters.

## Judged pairs

${effort.fields} invented fields in each row, two cables of each field truly equal. Every judge takes every pair once, sides and order by the
schedule; weight of a tie ${0.5}. Bands by clean cuts at a chance of 92 %.

- *best in band 1*: the cable that is truly easiest is in the first band.
- *equal parted*: the two equal cables are in different bands.
- *best set*: the smallest set with 95 % chance of holding the easiest; how often it does, and its mean size.

| cables, judges, spread of ability | best in band 1 | equal parted | best set holds | its size | bands | size of band 1 |
| --- | --- | --- | --- | --- | --- | --- |
${fieldRows(effort).join('\n')}
`;
}
