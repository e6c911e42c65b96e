/** The figures of the simulated lots as a page of markdown: `node scripts/figures.mjs` writes docs/figures.md from it. */
import { findingsOf } from '../../src/findings/findings.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { fold } from '../../src/trial/fold.ts';
import { COMPLICATIONS, type Complication } from './complications.ts';
import type { Judged } from './judge.ts';
import { runLots } from './runLots.ts';
import { hasMass, hasOhms, hasStrands, SUBSETS, type Subset } from './subsets.ts';
import { honestOf, median, percent, rangeOverLots, share, shareText } from './tally.ts';
import type { Benches } from './tools.ts';

export const LEVEL = 0.95;

export interface Effort {
  firstSeed: number;
  plainLots: number;
  complicatedLots: number;
}

export const FULL_EFFORT: Effort = { firstSeed: 41_000, plainLots: 40, complicatedLots: 20 };

export const assayEntries = (entries: readonly Entry[]) => findingsOf(fold(entries), { level: LEVEL, draws: 0 });

export function plainLots(effort: Effort, bench: Benches, subsets = SUBSETS): Judged[] {
  return runLots({ assay: assayEntries, firstSeed: effort.firstSeed, lots: effort.plainLots, bench, subsets });
}

/** Chance that a cable of a lot is concerned: whole lots, or about one cable in five as a trial might meet it. */
export type Prevalence = 1 | 0.2;
/** Rare complications need more lots for as many cases. */
const LOTS_TIMES: Readonly<Record<Prevalence, number>> = { 1: 1, 0.2: 3 };

/** The cables that the complication concerns, judged. */
export function complicatedLots(effort: Effort, complication: Complication, prevalence: Prevalence): Judged[] {
  const firstSeed = effort.firstSeed + 1000 * (1 + COMPLICATIONS.indexOf(complication));
  const lots = effort.complicatedLots * LOTS_TIMES[prevalence];
  const subsets = subsetsFor(complication);
  const judged = runLots({ assay: assayEntries, firstSeed, lots, bench: 'A', subsets, complication, prevalence });
  return judged.filter((each) => each.cable.concerned);
}

/** Only the subsets in which the complication can be felt. */
export function subsetsFor(complication: Complication): Subset[] {
  return SUBSETS.filter((subset) => {
    if (subset.eye || subset.name === 'mass only') return false;
    if (complication.contactMilliohms || complication.warmer) return hasOhms(subset);
    if (complication.countShare) return hasStrands(subset);
    const onMass = complication.lengthExcess || complication.massShare || complication.secondSpecimenError;
    return onMass ? hasMass(subset) : true;
  });
}

export function figuresPage(effort: Effort): string {
  const benches = (['A', 'B'] as const).map((bench) => ({ bench, judged: plainLots(effort, bench) }));
  return [
    introduction(effort),
    ...benches.map(({ bench, judged }) => plainSection(bench, judged, effort)),
    complicationSection(effort),
  ].join('\n');
}

function introduction(effort: Effort): string {
  return `# Figures from simulated lots

Written by \`node scripts/figures.mjs\`; nothing on this page is typed by hand. First seed ${effort.firstSeed}, level ${percent(LEVEL, 0)},
closed form (no random draws in the assay).

Each lot holds twenty invented cables that claim a size from 8 to 4/0 AWG. 45 % of them have 0.98 to 1.06 times the nominal
area, the others are short by anything up to 35 %. Lay factor 1.005 to 1.06, rope-laid up to 1.07. Metal: bare copper (46 %,
99 to 101.5 % IACS), tinned (25 %, 95 to 100 % IACS), clad aluminium (22 %, 10 to 30 % copper), aluminium (6 %) and
copper-clad steel (1 %). A lot is weighed as two pieces of 300 mm or one of 150 mm, and ohmed over 1 m or over the whole length of
1.5 to 3 m, each with even odds. Every tool has one steady error per lot, uniform within its limits; three repeats scatter
a little and are rounded to the display. Each piece differs from the cable's mean by 0.1 % (one standard deviation), each strand
by 0.4 % in diameter.

- *covered*: the true area lies in the interval. For mass alone, counted for copper only, since the area is stated "if copper".
- *accused*: a copper cable with at least 0.98 of the nominal area, of which "copper held", "AWG by area" or "metal" falls short.
- *missed*: short by 6 % or more, and neither "copper held" nor "AWG by area" falls short.
- *copper missed*: short by 6 % or more, or not copper, and "copper held" does not fall short.
- *metal*: the likeliest family is the true one (bare and tinned copper are one family).
- *half-width*: median of half the interval over the estimate.
`;
}

const BENCH_TEXT: Readonly<Record<Benches, string>> = {
  A: 'Bench A: scale ±0.03 g, rule ±0.5 mm, contact distance ±1 mm, four-wire meter ±(0.5 % + 2 µΩ), copper temperature ±2 °C, micrometer ±4 µm',
  B: 'Bench B: scale ±(1 g + 0.5 %), rule ±0.5 mm, contact distance ±1 mm, four-wire meter ±(1 % + 10 µΩ), copper temperature ±2 °C, caliper ±0.03 mm on strands',
};

const coveredOf = (each: Judged) =>
  each.subset.name === 'mass only' && each.cable.metal.family !== 'copper' ? null : each.covered;

function plainSection(bench: Benches, judged: readonly Judged[], effort: Effort): string {
  const heads = ['readings', 'covered', 'in single lots', 'accused', 'missed', 'copper missed', 'metal', 'half-width'];
  const rows = SUBSETS.map((subset) => {
    const here = judged.filter((each) => each.subset === subset);
    const range = rangeOverLots(here, coveredOf);
    return [
      subset.name,
      shareText(share(here, coveredOf)),
      range ? `${percent(range[0], 0)} to ${percent(range[1], 0)}` : '–',
      shareText(share(honestOf(here), (each) => each.accused)),
      shareText(share(here, (each) => each.missed)),
      shareText(share(here, (each) => each.copperMissed)),
      hasOhms(subset) ? shareText(share(here, (each) => each.metalRight)) : '–',
      halfWidthText(here, subset),
    ];
  });
  return `## ${BENCH_TEXT[bench]}

${effort.plainLots} lots, ${effort.plainLots * 20} cables in each row.

${table(heads, rows)}
`;
}

function halfWidthText(here: readonly Judged[], subset: Subset): string {
  if (!subset.eye) return percent(median(here.map((each) => each.halfWidth)), 2);
  const bare = here.filter((each) => each.cable.metal.name === 'bare');
  return `${percent(median(bare.map((each) => each.halfWidth)), 2)} (bare copper, seen red through)`;
}

function complicationSection(effort: Effort): string {
  const ofCables = COMPLICATIONS.filter((each) => each.of === 'cable');
  return `## When something is wrong that no model expects

Bench A. *Flagged*: the readings disagree (χ², p < 1 %), or two pieces of one cable do. *Right reading named*: of the flagged, those
where the finding asks for the culprit to be taken again. The cables of a trial share their tools, so what is wrong with all of them
alike can pass for a tool's steady error; what is wrong with one stands out more.

### With one cable in five (${effort.complicatedLots * LOTS_TIMES[0.2]} lots of each)

${complicationTable(effort, ofCables, 0.2)}

### With every cable of the lot (${effort.complicatedLots} lots of each)

${complicationTable(effort, COMPLICATIONS, 1)}

What redundancy cannot see has to be met by procedure: weigh cleaned strands without paper, cut square, count by bundles, take
the temperature in the strands, weigh two pieces.
`;
}

function complicationTable(effort: Effort, complications: readonly Complication[], prevalence: Prevalence): string {
  const heads = ['complication', 'readings', 'covered', 'flagged', 'right reading named', 'accused', 'missed'];
  const rows = complications.flatMap((complication) => {
    const judged = complicatedLots(effort, complication, prevalence);
    return subsetsFor(complication).map((subset) => {
      const here = judged.filter((each) => each.subset === subset);
      return [
        complication.name,
        subset.name,
        shareText(share(here, (each) => each.covered)),
        shareText(share(here, (each) => each.flagged)),
        complication.culprit ? shareText(share(here, (each) => named(each, complication.culprit!))) : '–',
        shareText(share(honestOf(here), (each) => each.accused)),
        shareText(share(here, (each) => each.missed)),
      ];
    });
  });
  return table(heads, rows);
}

/** null unless flagged: whether the reading to take again is the one at fault. */
export function named(each: Judged, culprit: NonNullable<Complication['culprit']>): boolean | null {
  if (!each.flagged) return null;
  const words = { mass: 'mass', resistance: 'resistance', strands: 'strand' };
  return each.recheck?.includes(words[culprit]) ?? false;
}

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');
}
