/** The standing as it is looked at: what is tried out, the order that follows at once, and everything beside it a moment later. */
import { signal } from '@preact/signals';
import type { Warning } from '../../../../findings/schema.ts';
import type { Decide } from '../../../../findings/shapes/decide.ts';
import type { OrderNow } from '../../../../findings/standing/orderBy.ts';
import type { Entry } from '../../../../journal/entry.ts';
import { Stopped } from '../../worker/bench.ts';
import type { StandingSaid, WishSent } from '../../worker/jobs.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { Drawer } from './drawer.ts';

/** Draws while a weight moves, every chance to ±0.6 %, and once it rests, to ±0.3 %. */
export const MOVING_DRAWS = 20_000;
export const RESTING_DRAWS = 100_000;
/** How long a weight must have stood still, ms. */
const REST = 250;

/** What is tried out on this page and not yet kept in the trial. */
export interface Tried {
  wish: WishSent | null;
  /** Scales by the names that plan.csv gives them. */
  scales: Record<string, string>;
}

export interface Standing {
  trial: string;
  entries: readonly Entry[];
  /** 'empty': fewer than two cables have anything to be ordered by. */
  stage: 'preparing' | 'moving' | 'drawing' | 'stopped' | 'done' | 'empty' | 'failed';
  order: OrderNow | null;
  decide: Decide | null;
  warnings: Warning[];
  /** Draws done so far of those at rest. */
  drawn: number;
  /** What stood in the way; empty unless the stage is 'failed'. */
  sentence: string;
}

export const standing = signal<Standing | null>(null);
export const tried = signal<Tried>({ wish: null, scales: {} });

/** The trial that `tried` is about: what was tried out lasts while somebody looks at another place. */
let triedFor = '';

const moving = new Drawer();
const resting = new Drawer();
let timer: ReturnType<typeof setTimeout> | undefined;
/** One question at a time goes to the worker that follows the slider; the last wish is the next one asked. */
let asking = false;
let askAgain = false;

/** Takes a trial's journal; the same one again changes nothing. */
export function standOn(trial: string, entries: readonly Entry[]): void {
  const now = standing.peek();
  if (now?.trial === trial && now.entries === entries) return;
  if (now?.trial !== trial) {
    if (triedFor !== trial) tried.value = { wish: null, scales: {} };
    triedFor = trial;
    standing.value = {
      trial,
      entries,
      stage: 'preparing',
      order: null,
      decide: null,
      warnings: [],
      drawn: 0,
      sentence: '',
    };
  } else alter({ entries, stage: now.decide === null ? 'preparing' : 'moving' });
  resting.stop();
  void follow();
}

/** Lets go of the workers and what they hold. */
export function leaveStanding(): void {
  clearTimeout(timer);
  moving.stop();
  resting.stop();
  standing.value = null;
}

/** Tries something out: the order follows at once, the rest when it has stood still for a moment. */
export function tryOut(next: Partial<Tried>): void {
  const rescaled = next.scales !== undefined;
  tried.value = { ...tried.peek(), ...next };
  clearTimeout(timer);
  if (rescaled) resting.stop();
  // Once there is an order it is that of an earlier wish, however briefly it has stood there.
  if (standing.peek()?.decide != null) alter({ stage: 'moving' });
  void follow();
}

/** Stops the draws at rest; what was shown stays. */
export function stopResting(): void {
  resting.stop();
}

/** Asks the worker that follows the slider, the last wish only. */
async function follow(): Promise<void> {
  if (asking) {
    askAgain = true;
    return;
  }
  asking = true;
  try {
    do {
      askAgain = false;
      const now = standing.peek();
      if (now === null) return;
      const first = now.decide === null;
      const said = await moving.ask(now.entries, { ...tried.peek(), draws: MOVING_DRAWS, quick: !first });
      if (standing.peek()?.entries !== now.entries) continue;
      if (said === null) return alter({ stage: 'empty' });
      take(said);
    } while (askAgain);
    clearTimeout(timer);
    timer = setTimeout(() => void rest(), REST);
  } catch (error) {
    if (!(error instanceof Stopped)) alter({ stage: 'failed', sentence: sentenceOf(error) });
  } finally {
    asking = false;
    if (askAgain && standing.peek() !== null) void follow();
  }
}

/** Draws five times as many for what is wished now, and says everything beside the order. */
export async function rest(): Promise<void> {
  const now = standing.peek();
  const wished = tried.peek();
  if (now === null) return;
  alter({ stage: 'drawing', drawn: 0 });
  const current = () => standing.peek()?.entries === now.entries && tried.peek() === wished;
  try {
    const hear = (drawn: number) => current() && alter({ drawn });
    const said = await resting.ask(now.entries, { ...wished, draws: RESTING_DRAWS, quick: false }, hear);
    if (!current()) return restAnew();
    if (said === null) return;
    take(said);
    alter({ stage: 'done' });
  } catch (error) {
    if (!current()) return;
    if (!(error instanceof Stopped)) return alter({ stage: 'failed', sentence: sentenceOf(error) });
    // Stopped by somebody: the rest is said from the draws that are there.
    const said = await moving.ask(now.entries, { ...wished, draws: MOVING_DRAWS, quick: false }).catch(() => null);
    if (!current() || said === null) return;
    take(said);
    alter({ stage: 'stopped' });
  }
}

/** What was tried out became the trial's own while it was drawn: the same is drawn for that. */
function restAnew(): void {
  if (standing.peek()?.stage !== 'drawing') return;
  clearTimeout(timer);
  timer = setTimeout(() => void rest(), REST);
}

function take({ order, full }: StandingSaid): void {
  alter(full === null ? { order } : { order, decide: full.decide, warnings: full.warnings });
}

function alter(next: Partial<Standing>): void {
  const now = standing.peek();
  if (now !== null) standing.value = { ...now, ...next };
}
