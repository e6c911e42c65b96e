import type { OutcomeLevels } from '../../methods/assay/conformity.ts';
import { type Outlook, type OutlookOptions, outlookOf } from '../../methods/decide/planPower.ts';
import { STARTING_ODDS } from '../../methods/metal/hypotheses.ts';
import type { SizeClaim } from '../../units/sizeText.ts';
import { AREA_ALLOWANCE, copperRequired } from '../claims/requirements.ts';
import { repeatsInput } from '../rows/effects.ts';
import { rowsOfTrial } from '../rows/rowsOfTrial.ts';
import { foretoldTrial, type PlannedWork, trueScatterOfMean } from './foretoldTrial.ts';

export interface PowerOptions {
  /** Relative, such as 0.05. */
  shortfall: number;
  metal: OutlookOptions['metal'];
  /** Imagined cables of each size. */
  draws: number;
  /** At least 8 bytes, hexadecimal. */
  seed: string;
  levels?: OutcomeLevels;
}

/** What a plan would show, of a cable that is short and of honest ones. */
export interface PlanPower {
  shortfall: number;
  /** A cable short by so much. */
  short: Outlook;
  /** A cable of exactly the size, and one 3 % larger. */
  honest: Outlook;
  generous: Outlook;
  sentence: string;
}

/** How much more than nominal a generous maker gives. Common practice, no source. */
const GENEROUS = 0.03;
/** What a scraped strand shows, in words that the table of sights knows. */
const SEEN = { copper: 'red through', 'tinned copper': 'tin outside' } as const;

/** A plan looks at the strands or not; what is seen then follows from the metal. */
export type WorkToTry = Omit<PlannedWork, 'seen'> & { eye: boolean };

/**
 * The area from which a shortfall is counted, m²: the nominal one; but where a size is only a name and its standard asks for
 * less copper, the area that has that much at its lower allowance.
 */
export function areaClaimed(size: SizeClaim): { area: number; required: number } | null {
  const asked = copperRequired(size);
  if (!asked) return null;
  return { area: Math.min(asked.nominal, asked.required / (1 + AREA_ALLOWANCE)), required: asked.required };
}

function outlookAt(area: number, work: WorkToTry, o: OutlookOptions): Outlook {
  const seen = work.eye && o.metal !== 'either' ? SEEN[o.metal] : null;
  const { cables, inputs } = rowsOfTrial(foretoldTrial(area, { ...work, seen }));
  const [cable] = cables;
  const scatter = Object.fromEntries(
    cable.groups.all.map((g) => [repeatsInput(g), trueScatterOfMean(g.quantity, g.mean, g.step, g.n)]),
  );
  return outlookOf({ area, cable: cable.assay, scatter }, inputs, o);
}

/**
 * Outlook for cables of one true area. A look at the strands comes out by the metal, so bare and tinned cables are then drawn
 * apart, as many of each as the starting odds say.
 */
export function outlookOfWork(area: number, work: WorkToTry, o: OutlookOptions): Outlook {
  if (!work.eye || o.metal !== 'either') return outlookAt(area, work, o);
  const bareShare = STARTING_ODDS.copper / (STARTING_ODDS.copper + STARTING_ODDS['tinned copper']);
  const bareDraws = Math.round(o.draws * bareShare);
  const bare = outlookAt(area, work, { ...o, metal: 'copper', draws: bareDraws });
  const tinned = outlookAt(area, work, { ...o, metal: 'tinned copper', draws: o.draws - bareDraws });
  return pooled(bare, tinned);
}

function pooled(a: Outlook, b: Outlook): Outlook {
  const draws = a.draws + b.draws;
  const share = (of: (o: Outlook) => number) => (draws > 0 ? (of(a) * a.draws + of(b) * b.draws) / draws : 0);
  return {
    draws,
    fallsShort: share((o) => o.fallsShort),
    meets: share((o) => o.meets),
    notSettled: share((o) => o.notSettled),
    halfWidth:
      a.halfWidth === null || b.halfWidth === null ? (a.halfWidth ?? b.halfWidth) : share((o) => o.halfWidth ?? 0),
  };
}

/** Whether a plan holds any reading that the assay could use. */
export const readsAnything = (work: WorkToTry) => work.mass !== null || work.ohms !== null || work.strands !== null;

/**
 * Will this plan show a shortfall? Imagined cables, one short, one honest, one generous, are read as planned and judged by
 * the assay's own model.
 *
 * @returns null when the size claims no area, or nothing would be read
 * @throws RangeError for a shortfall outside 0 to 1
 */
export function powerOfPlan(size: SizeClaim, work: WorkToTry, o: PowerOptions): PlanPower | null {
  if (!(o.shortfall > 0 && o.shortfall < 1))
    throw new RangeError(`a shortfall lies between 0 and 1, got ${o.shortfall}`);
  const claim = areaClaimed(size);
  if (!claim || !readsAnything(work)) return null;
  const at = (share: number) => outlookOfWork(claim.area * share, work, { ...o, required: claim.required });
  const short = at(1 - o.shortfall);
  const honest = at(1);
  const generous = at(1 + GENEROUS);
  return { shortfall: o.shortfall, short, honest, generous, sentence: powerSentence(o.shortfall, short, honest) };
}

const percent = (share: number) => `${Number((100 * share).toPrecision(2))} %`;

/** A share of the draws as people say it: `93 times in 100`, and words at the ends, where draws cannot tell. */
export function timesIn100(share: number, draws: number): string {
  if (share * draws < 0.5) return `not once in ${draws} tries`;
  if (share > 0.995) return 'more than 99 times in 100';
  return share < 0.005 ? 'less than once in 100' : `${Math.round(100 * share)} times in 100`;
}

function powerSentence(shortfall: number, short: Outlook, honest: Outlook): string {
  const shows = `This plan shows a ${percent(shortfall)} shortfall ${timesIn100(short.fallsShort, short.draws)}`;
  const wrongly = timesIn100(honest.fallsShort, honest.draws);
  return `${shows}. A cable of exactly its size it settles as meeting the label ${timesIn100(honest.meets, honest.draws)}, and calls short ${wrongly}.`;
}
