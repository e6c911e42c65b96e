/** The plan of the open trial. The worker lays it out after every entry; what it would show takes longer and follows. */
import { effect, signal } from '@preact/signals';
import type { LabelPower } from '../../../../findings/plan/planPowers.ts';
import type { TrialPlan } from '../../../../findings/plan.ts';
import type { Entry } from '../../../../journal/entry.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Bench, Stopped } from '../../worker/bench.ts';
import { entries, folded } from '../journal/journal.ts';
import { sentenceOf } from '../sentenceOf.ts';

/** What is cut, done and bought. The last plan stays in sight while the next is laid out. */
export interface Planned {
  trial: string;
  plan: TrialPlan | null;
  busy: boolean;
  sentence: string;
}

/** What the plan would show, and the least work that would show enough. */
export interface Outlook {
  trial: string;
  stage: 'none' | 'computing' | 'searching' | 'stopped' | 'done' | 'failed';
  powers: readonly LabelPower[];
  /** The plan in one sentence; empty until it is known. */
  sentence: string;
  /** Plans tried in the search so far. */
  tried: number;
  trouble: string;
}

export const planned = signal<Planned | null>(null);
export const outlook = signal<Outlook | null>(null);

/** Imagined cables of each size: enough to tell 90 in 100 from 93. */
const DRAWS = 600;
/** Wait after an edit before the imagined cables are drawn, ms: the next edit often follows at once. */
const PAUSE = 300;

const quick = new Bench();
const slow = new Bench();
let asked = 0;
let looks = 0;
let lookedAt = '';
let pause: ReturnType<typeof setTimeout> | undefined;

/** Follows the open journal with plan and outlook; answers the way to stop. */
export function followPlan(): () => void {
  const stop = effect(() => {
    const trial = folded.value;
    if (trial === null) return;
    void layOut(trial.trial, entries.value);
    const key = whatDecides(trial);
    if (key === lookedAt && outlook.peek()?.trial === trial.trial) return;
    lookedAt = key;
    clearTimeout(pause);
    const now = outlook.peek();
    outlook.value =
      now?.trial === trial.trial
        ? { ...now, stage: 'computing', trouble: '' }
        : { trial: trial.trial, stage: 'computing', powers: [], sentence: '', tried: 0, trouble: '' };
    pause = setTimeout(() => void look(trial.trial, entries.peek()), PAUSE);
  });
  return () => {
    stop();
    clearTimeout(pause);
    slow.stop();
    lookedAt = '';
  };
}

/** Stops the search; what was found until then stays. */
export function stopLooking(): void {
  slow.stop();
}

/** Looks again after a stop. */
export function lookAgain(): void {
  const now = outlook.peek();
  if (now !== null) void look(now.trial, entries.peek());
}

/** Everything that the outlook rests on: readings change it only through the limits of the tools. */
function whatDecides({ trial, cables, instruments, settings }: Trial): string {
  return JSON.stringify([
    trial,
    cables.map(({ cable, row }) => [cable, row]),
    instruments.map(({ instrument, kind, resolution, limit }) => [instrument, kind, resolution, limit]),
    settings,
  ]);
}

async function layOut(trial: string, said: readonly Entry[]): Promise<void> {
  asked += 1;
  const mine = asked;
  const now = planned.peek();
  planned.value = now?.trial === trial ? { ...now, busy: true } : { trial, plan: null, busy: true, sentence: '' };
  try {
    const plan = await quick.ask('plan', { entries: said, draws: 0, withSmallest: false });
    if (mine === asked) planned.value = { trial, plan, busy: false, sentence: '' };
  } catch (error) {
    if (mine === asked) planned.value = { trial, plan: null, busy: false, sentence: sentenceOf(error) };
  }
}

async function look(trial: string, said: readonly Entry[]): Promise<void> {
  looks += 1;
  const mine = looks;
  slow.stop();
  change(trial, { stage: 'computing', tried: 0 });
  try {
    const first = await slow.ask('plan', { entries: said, draws: DRAWS, withSmallest: false });
    const stage = first.powers.length === 0 ? 'none' : 'searching';
    change(trial, { stage, powers: first.powers, sentence: first.sentence });
    if (stage === 'none') return;
    const hear = (tried: number) => change(trial, { tried });
    const found = await slow.ask('plan', { entries: said, draws: DRAWS, withSmallest: true }, hear);
    change(trial, { stage: 'done', powers: found.powers, sentence: found.sentence });
  } catch (error) {
    // A search that gave way to a newer one has nothing more to say.
    if (mine !== looks) return;
    change(trial, { stage: error instanceof Stopped ? 'stopped' : 'failed', trouble: sentenceOf(error) });
  }
}

function change(trial: string, next: Partial<Outlook>): void {
  const now = outlook.peek();
  if (now?.trial === trial) outlook.value = { ...now, ...next };
}
