import type { OutcomeLevels } from '../../methods/assay/conformity.ts';
import type { OutlookOptions } from '../../methods/decide/planPower.ts';
import type { SizeClaim } from '../../units/sizeText.ts';
import { type BenchTools, usualTool } from './benchTools.ts';
import { apartWith, type CableToPlan, minutesFor, type ReadingsWanted, workWith } from './plannedWork.ts';
import { areaClaimed, outlookOfWork, readsAnything, timesIn100, type WorkToTry } from './powerOfPlan.ts';

export interface SmallestPlanOptions {
  size: SizeClaim;
  /** m: bought, or to be bought. */
  wholeLength: number;
  strands: number | null;
  tools: BenchTools;
  /** How many such cables are to be tested: minutes are for all of them. */
  cables: number;
  shortfall: number;
  metal: OutlookOptions['metal'];
  /** Share of short cables that the plan is to show; 0.9 unless said otherwise. */
  wanted?: number;
  draws: number;
  seed: string;
  levels?: OutcomeLevels;
  /** Called after each plan that was tried. */
  onTry?: () => void;
}

/** One plan that was tried. */
export interface TriedPlan {
  /** What it does, in plain words. */
  words: string;
  readings: ReadingsWanted;
  work: WorkToTry;
  minutes: number;
  /** Share of short cables that it shows. */
  shows: number;
}

export interface SmallestPlan {
  /** The plan of the least minutes that shows enough; null when none of these does with the tools at hand. */
  plan: TriedPlan | null;
  /** Plans tried, by minutes, up to the one that showed enough. */
  tried: TriedPlan[];
  /** The one tool that would help most when borrowed, and the plan that it makes; null when none is needed or none helps. */
  borrow: { tool: string; plan: TriedPlan } | null;
  sentence: string;
}

const SEVERAL = 3;
const NOTHING: ReadingsWanted = {
  weigh: false,
  ohms: false,
  strands: false,
  eye: false,
  pieces: 1,
  repeats: 1,
  apartLength: null,
};

/** How much longer a piece is cut when a longer one is tried. */
const LONGER = 3;

/** The ladder: what a bench can do, from a scale alone up to everything. */
function ladder(tools: BenchTools, area: number): ReadingsWanted[] {
  const weigh = { ...NOTHING, weigh: true };
  const ohms = { ...weigh, ohms: true };
  const longer = { apartLength: LONGER * apartWith(tools, area).length };
  const rungs = [weigh, { ...weigh, ...longer }, ohms, { ...ohms, ...longer }, { ...ohms, repeats: SEVERAL }];
  const more = [...rungs, { ...weigh, strands: true }, { ...ohms, strands: true }];
  const most = { ...ohms, strands: true, pieces: 2, repeats: SEVERAL };
  return [...more, most].flatMap((rung) => [rung, { ...rung, eye: true }]);
}

/** Tools that a tester might borrow, and the bench with them; null where it has them already. */
const BORROWED: readonly { tool: string; with: (tools: BenchTools) => BenchTools | null }[] = [
  {
    tool: 'four-wire meter',
    with: (t) => (t.meter ? null : { ...t, meter: usualTool('four-wire meter', 1e-6) }),
  },
  {
    tool: 'pocket scale',
    with: (t) =>
      t.scale && t.scale.limit.absolute <= usualTool('pocket scale').limit.absolute
        ? null
        : { ...t, scale: usualTool('pocket scale') },
  },
  {
    tool: 'pocket scale and a four-wire meter',
    with: (t) =>
      t.scale || t.meter ? null : { ...t, scale: usualTool('pocket scale'), meter: usualTool('four-wire meter', 1e-6) },
  },
  { tool: 'micrometer', with: (t) => (t.micrometer ? null : { ...t, micrometer: usualTool('micrometer') }) },
];

function wordsOf(work: WorkToTry): string {
  const { mass, ohms, strands, eye } = work;
  const times = (n: number) => (n === 1 ? 'once' : n === 2 ? 'twice' : `${n} times`);
  const parts = [
    ohms ? `read ${ohms.over.toFixed(1)} m with four wires ${times(ohms.repeats)}` : '',
    mass
      ? `weigh ${mass.pieces === 1 ? 'one piece' : `${mass.pieces} pieces`} of ${Math.round(mass.over * 1000)} mm ${times(mass.repeats)}`
      : '',
    strands ? `count the strands and measure ${strands.measured} of them` : '',
    eye ? 'scrape a strand and look' : '',
  ].filter((part) => part !== '');
  return parts.join(', ');
}

/** Plans of the ladder that these tools can carry out, each once, by minutes. */
function plansWith(tools: BenchTools, cable: CableToPlan, cables: number): Omit<TriedPlan, 'shows'>[] {
  const seen = new Set<string>();
  return ladder(tools, cable.area)
    .flatMap((readings) => {
      const work = workWith(tools, cable, readings);
      const words = wordsOf(work);
      if (!readsAnything(work) || seen.has(words)) return [];
      seen.add(words);
      return [{ words, readings, work, minutes: minutesFor(work, cables) }];
    })
    .sort((a, b) => a.minutes - b.minutes);
}

/**
 * The plan of the least bench minutes that shows a shortfall often enough, searched over a small ladder: scale alone, ohms on
 * the whole length, a longer piece, repeats, strands by micrometer, a scraped strand. When none does with the tools at hand,
 * the one tool whose loan would make such a plan, or the best there is, is named.
 *
 * @returns null when the size claims no area
 */
export function smallestPlan(o: SmallestPlanOptions): SmallestPlan | null {
  const claim = areaClaimed(o.size);
  if (!claim) return null;
  const wanted = o.wanted ?? 0.9;
  const { metal, draws, seed, levels } = o;
  const short = claim.area * (1 - o.shortfall);
  const climb = (tools: BenchTools): TriedPlan[] => {
    const tried: TriedPlan[] = [];
    const cable = { area: claim.area, wholeLength: o.wholeLength, strands: o.strands };
    for (const plan of plansWith(tools, cable, o.cables)) {
      const look = outlookOfWork(short, plan.work, { required: claim.required, metal, draws, seed, levels });
      tried.push({ ...plan, shows: look.fallsShort });
      o.onTry?.();
      if (look.fallsShort >= wanted) break;
    }
    return tried;
  };
  const tried = climb(o.tools);
  const plan = tried.find((t) => t.shows >= wanted) ?? null;
  const borrow = plan ? null : toBorrow(o.tools, tried, climb, wanted);
  return { plan, tried, borrow, sentence: sentenceOf(o, plan, tried, borrow, wanted) };
}

const most = (plans: readonly TriedPlan[]) =>
  plans.reduce<TriedPlan | null>((a, b) => (a === null || b.shows > a.shows ? b : a), null);

/** The loan that makes a plan of the fewest minutes; where none shows enough, the one that shows most, if it beats what is there. */
function toBorrow(
  tools: BenchTools,
  tried: readonly TriedPlan[],
  climb: (tools: BenchTools) => TriedPlan[],
  wanted: number,
): SmallestPlan['borrow'] {
  const loans = BORROWED.flatMap(({ tool, with: withTool }) => {
    const more = withTool(tools);
    const best = more ? most(climb(more)) : null;
    return best ? [{ tool, plan: best }] : [];
  });
  const enough = loans.filter((l) => l.plan.shows >= wanted).sort((a, b) => a.plan.minutes - b.plan.minutes);
  if (enough.length > 0) return enough[0]!;
  const now = most(tried)?.shows ?? 0;
  const better = loans.filter((l) => l.plan.shows > now).sort((a, b) => b.plan.shows - a.plan.shows);
  return better[0] ?? null;
}

function sentenceOf(
  o: SmallestPlanOptions,
  plan: TriedPlan | null,
  tried: readonly TriedPlan[],
  borrow: SmallestPlan['borrow'],
  wanted: number,
): string {
  const short = `a ${Number((100 * o.shortfall).toPrecision(2))} % shortfall`;
  const shows = (p: TriedPlan) => timesIn100(p.shows, o.draws);
  const minutes = (p: TriedPlan) => `about ${Math.round(p.minutes)} minutes`;
  if (plan) return `Least work that shows ${short} ${shows(plan)}: ${plan.words} (${minutes(plan)}).`;
  const best = most(tried);
  const here = best
    ? `With these tools no plan shows ${short} ${Math.round(100 * wanted)} times in 100; the best shows it ${shows(best)}: ${best.words}.`
    : 'With the tools listed nothing of the conductor can be read.';
  if (!borrow) return here;
  const then =
    borrow.plan.shows >= wanted
      ? `it is then shown ${shows(borrow.plan)} in ${minutes(borrow.plan)}`
      : `it is then shown ${shows(borrow.plan)}, still not enough`;
  return `${here} Borrow a ${borrow.tool}: ${then} (${borrow.plan.words}).`;
}
