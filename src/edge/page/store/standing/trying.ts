/** What can be done with weights and scales: move one, take a job, rank, keep, go back. */
import { signal } from '@preact/signals';
import type { CriterionFound } from '../../../../findings/shapes/decide.ts';
import { rankingText, scaleText, weightsText } from '../../../../findings/standing/settings.ts';
import { saySetting } from '../plan/settings.ts';
import { scaleSetting } from './scaleNow.ts';
import { movedShares, type Shares, wholeShares } from './shares.ts';
import { openSliders, slidersOf } from './sliders.ts';
import { type Standing, standing, tried, tryOut } from './standing.ts';

/** Sliders that stand open; chosen `anew` once the order of a job is there, never while one moves. */
export const openIds = signal<{ trial: string; ids: string[]; anew: boolean } | null>(null);
/** Which slider moves, and what the shares were before it did. */
let begun: { id: string; base: Shares } | null = null;

/** The shares as they are now: those tried out, else those of the order at hand. */
export function sharesNow({ order, decide }: Standing): Shares {
  const { wish } = tried.value;
  const ids = (decide?.criteria ?? []).map(({ id }) => id);
  if (wish !== null && 'numbers' in wish) return new Map(ids.map((id) => [id, wish.numbers[id] ?? 0]));
  const whole = wholeShares(ids.map((id) => order?.weights.find((w) => w.criterion === id)?.weight ?? 0));
  return new Map(ids.map((id, at) => [id, whole[at]!]));
}

/** Moves what one slider moves to a share of 100. */
export function moveShare(id: string, members: readonly string[], to: number): void {
  const now = standing.peek();
  if (now === null) return;
  if (begun?.id !== id) begun = { id, base: sharesNow(now) };
  keepOpen();
  const among = openIds.peek()?.ids ?? [];
  const shares = movedShares(begun.base, members, to, among);
  tryOut({ wish: { numbers: Object.fromEntries(shares) } });
}

/** Where the open sliders are those of the shares at hand again. */
export function chooseOpen(now: Standing): void {
  if (now.decide === null) return;
  openIds.value = { trial: now.trial, ids: openSliders(slidersOf(now.decide.criteria, sharesNow(now))), anew: false };
}

/** Those that stand open stay until the order of what is wished now is there, and are then chosen by its weights. */
function chooseLater(): void {
  const now = openIds.peek();
  if (now !== null) openIds.value = { ...now, anew: true };
}

function keepOpen(): void {
  const now = openIds.peek();
  if (now?.anew) openIds.value = { ...now, anew: false };
}

/** Takes the weights of a job. */
export function takeJob(job: string): void {
  begun = null;
  chooseLater();
  tryOut({ wish: { job } });
}

/** Takes an order of importance. */
export function takeRanking(ranking: string[][]): void {
  begun = null;
  chooseLater();
  tryOut({ wish: ranking.length === 0 ? null : { ranking } });
}

/** Tries out a scale of one criterion. */
export function tryScale(id: string, scale: Pick<CriterionFound, 'shape' | 'worst' | 'best'>): void {
  tryOut({ scales: { ...tried.peek().scales, [scaleSetting(id)]: scaleText(scale) } });
}

/** Back to what the trial keeps. */
export function backToKept(): void {
  begun = null;
  chooseLater();
  tryOut({ wish: null, scales: {} });
}

/** Keeps what is tried out as settings of the trial, one entry each. */
export async function keepTried(): Promise<void> {
  const { wish, scales } = tried.peek();
  if (wish !== null) {
    const numbers = 'numbers' in wish ? weightsText(new Map(Object.entries(wish.numbers))) : '';
    await saySetting('standing_weights', numbers);
    await saySetting('standing_ranking', 'ranking' in wish ? rankingText(wish.ranking) : '');
    await saySetting('standing_job', 'job' in wish ? wish.job : '');
  }
  for (const [name, text] of Object.entries(scales)) await saySetting(name, text);
  begun = null;
  tried.value = { wish: null, scales: {} };
}

/** Keeps the scales of all criteria that count as they stand, so that no cable can move another's worth. */
export async function keepScales(criteria: readonly CriterionFound[]): Promise<void> {
  for (const criterion of criteria)
    if (criterion.weight > 0) await saySetting(scaleSetting(criterion.id), scaleText(criterion));
  tried.value = { ...tried.peek(), scales: {} };
}
