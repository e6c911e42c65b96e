/** Running an endurance test: kept on this device step by step, and every outcome an entry of its own. */
import { computed, signal } from '@preact/signals';
import { type EarlierOutcome, earlierOutcomes } from '../../../../findings/bench/earlierOutcomes.ts';
import { type AbusePiece, piecesToAbuse } from '../../../../findings/bench/piecesToAbuse.ts';
import type { Protocol } from '../../../../methods/jacket/protocols/protocol.ts';
import { protocolOf } from '../../../../methods/jacket/protocols/protocols.ts';
import { splitTyped, unitText } from '../../../../units/typedText.ts';
import { freshName } from '../bench/freshName.ts';
import { signOf } from '../bench/names.ts';
import { announce } from '../bench/said.ts';
import { recordedBy } from '../journal/device.ts';
import { folded, say } from '../journal/journal.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { putAside } from '../putAside.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { FIELDS, type Outcome, rowOf, wrongSetUp, wrongWith } from './runRow.ts';
import {
  addStrokes,
  atStop,
  clockAmount,
  endOf,
  forNextPiece,
  freshRun,
  hoursBy,
  lookAt,
  type Run,
  readRun,
  roomFor,
  strokes,
  takeBackStroke,
  toggleClock,
} from './runState.ts';
import { setUpInUnits } from './setUpUnits.ts';

/** By trial, as JSON: a count survives a reload, a flat battery and a closed page. */
const kept = keptSignal<Record<string, string>>('cupel.jacket.run', {}, isTexts);

/** The test that is being run here in the open trial; null while none is chosen. */
export const run = computed<Run | null>(() => (folded.value === null ? null : readRun(kept.value[folded.value.trial])));

/** What stands in the field where a tool is read. */
export const figureTyped = signal('');
/** What is wrong, in a sentence. */
export const runTrouble = signal('');
/** At which amount the piece is to be looked at now; null for none. */
export const lookNow = signal<number | null>(null);

/** The outcome that waits for a word on the hours, which the clock here did not run; null for none. */
export const hoursAsked = signal<Outcome | null>(null);

export interface JustTested {
  endurance: string;
  words: string;
  /** What should be known about it, such as that it does not count; empty for nothing. */
  mind: string;
  /** The run before the outcome, to go back to. */
  before: Run;
  figure: string;
}
export const lastTested = signal<JustTested | null>(null);

function keep(next: Run | null): void {
  const trial = folded.peek()?.trial;
  if (trial === undefined) return;
  const { [trial]: _, ...others } = kept.value;
  kept.value = next === null ? others : { ...others, [trial]: JSON.stringify(next) };
}

function alter(step: (now: Run) => Run): void {
  const now = run.peek();
  if (now !== null) keep(step(now));
}

/** Takes up a test; null lets go of it. */
export function chooseTest(protocol: Protocol | null | 'none'): void {
  runTrouble.value = '';
  lookNow.value = null;
  lastTested.value = null;
  hoursAsked.value = null;
  figureTyped.value = '';
  keep(protocol === 'none' ? null : freshRun(protocol));
}

export const setUp = (part: Partial<Run>): void => {
  runTrouble.value = '';
  alter((now) => ({ ...now, ...part }));
};

/** The protocol of the test in hand; null for one of one's own. */
export const protocolNow = computed<Protocol | null>(() => (run.value === null ? null : protocolOf(run.value.test)));

/** The piece to take now, and all others. */
export const pieces = computed(() => {
  const [trial, now] = [folded.value, run.value];
  if (trial === null || now === null) return null;
  const { all, left } = piecesToAbuse(trial, now.test);
  const chosen = all.find((p) => p.specimen === now.specimen);
  const inHand: AbusePiece | null = chosen ?? left[0] ?? null;
  const next = left.find((p) => p.specimen !== inHand?.specimen) ?? null;
  return { all, left, inHand, next, done: all.filter((p) => p.done).length };
});

/** What the piece in hand came to in this test before; empty where nothing stands. */
export const earlier = computed<readonly EarlierOutcome[]>(() => {
  const [trial, now, piece] = [folded.value, run.value, pieces.value?.inHand];
  return trial === null || now === null || piece == null ? [] : earlierOutcomes(trial, piece.specimen, now);
});

/** Says that what was kept of the piece in hand in this test was a slip: it is put aside with that reason, and the piece is free again. */
export async function earlierWasSlip(): Promise<void> {
  try {
    for (const { which } of earlier.peek()) await putAside({ about: 'endurance', which }, 'the earlier one was a slip');
    announce('The earlier one is put aside. What is kept now counts.');
  } catch (error) {
    runTrouble.value = `Not put aside. ${sentenceOf(error)}`;
    announce(runTrouble.value);
  }
}

/** Begins with the first piece, or says all of the set-up that cannot be. Figures with a unit behind them are converted first. */
export function begin(): void {
  const typed = run.peek();
  if (typed === null) return;
  const { changed, wrong } = setUpInUnits(typed, FIELDS);
  const all = [...wrong, ...wrongSetUp({ ...typed, ...changed })].join(' ');
  runTrouble.value = all;
  if (all === '') setUp({ ...changed, begun: true });
  // What was wrong before is not left standing for those who hear the page.
  announce(all === '' ? 'The test has begun.' : all);
}

/** Adds strokes, as far as the end that was fixed for all; says where to look, and where to stop. */
export function count(more: number): void {
  const before = run.peek();
  if (before === null || before.way !== 'strokes' || pieces.peek()?.inHand == null) return;
  const n = roomFor(before, more);
  if (n === 0) {
    announce(`${endOf(before)}: ended. Survived? For a longer test, take the end away first.`, { kept: true });
    return;
  }
  alter((now) => addStrokes(now, n));
  const now = run.peek()!;
  const look = lookAt(now, strokes(before));
  if (look !== null) announce(`${look}: look now.`, { kept: true });
  lookNow.value = look;
  const [was, is] = [atStop(now, strokes(before)), atStop(now, strokes(now))];
  if (is && !was) announce(`${strokes(now)}: ended. Survived?`, { kept: true });
}

/** Takes the fixed end away, so that pieces run until copper shows; those that were ended before survived what they survived. */
export function testLonger(): void {
  setUp({ stopAt: '' });
  announce('No end is fixed now: count until copper shows.');
}

export function takeBackCount(): void {
  lookNow.value = null;
  alter(takeBackStroke);
}

export const startOrStop = (): void => alter((now) => toggleClock(now, Date.now()));

/** What the piece in hand came to, as it would be kept. */
function amountNow(now: Run): { amount: string; unit: string } {
  if (now.way === 'strokes') return { amount: String(strokes(now)), unit: now.unit };
  if (now.way === 'timer') return { amount: String(clockAmount(now, Date.now())), unit: now.unit };
  if (now.way === 'once') return { amount: now.exposure.trim(), unit: now.unit };
  const { number, unit } = splitTyped(figureTyped.peek());
  return { amount: number, unit: unit || now.unit };
}

const NOTHING: Readonly<Record<Run['way'], string>> = {
  strokes: 'Found no strokes counted; expected one or more before the piece has an outcome.',
  timer: 'Found the clock at nothing; expected it to have run before the piece has an outcome.',
  typed: 'Found nothing; type the greatest figure that the tool showed.',
  once: 'Found no exposure; expected how much every piece had.',
};

let busy = false;

/** Keeps the outcome of the piece in hand on this device and takes up the next. */
export async function keepOutcome(outcome: Outcome): Promise<void> {
  const [now, trial, piece] = [run.peek(), folded.peek(), pieces.peek()?.inHand];
  if (busy || now === null || trial === null || piece == null) return;
  const { amount, unit } = amountNow(now);
  const isHours = now.way === 'once' && now.unit === 'h';
  const by = isHours ? hoursBy(now, Date.now()) : '';
  hoursAsked.value = by === null ? outcome : null;
  if (by === null) return announce('Are the hours known otherwise than by the clock here?');
  const row = { ...rowOf(now, piece.specimen, amount, unit, outcome), ...(by === '' ? {} : { amount_by: by }) };
  const before = earlier.peek().find(({ failed }) => failed);
  const wrong = amount === '' || amount === '0' ? NOTHING[now.way] : wrongWith(row, 'Amount');
  runTrouble.value = wrong;
  if (wrong !== '') return announce(wrong);
  busy = true;
  const endurance = freshName('e');
  try {
    await say('endurance', { endurance, ...row });
    const how = outcome === 'failed' ? 'failed at' : 'survived';
    const hours = by === 'planned' ? ' as planned' : by === 'clock' ? ' by the clock' : '';
    const words = `${signOf(trial, piece.specimen)} ${how} ${amount} ${unitText(unit) || unit}${hours}`;
    const mind = before ? `It failed before, at ${before.shown}: that counts, and this does not.` : '';
    lastTested.value = {
      endurance,
      words,
      mind,
      before: { ...now, specimen: piece.specimen },
      figure: figureTyped.peek(),
    };
    figureTyped.value = '';
    lookNow.value = null;
    alter(forNextPiece);
    announce(`Kept: ${words}. ${mind}`.trim(), { kept: true });
  } catch (error) {
    runTrouble.value = `Not kept. ${sentenceOf(error)}`;
    announce(runTrouble.value);
  } finally {
    busy = false;
  }
}

/** The answer about the hours of an exposure: known otherwise, for every piece of the test, or not yet. */
export function answerHours(known: boolean): void {
  const outcome = hoursAsked.peek();
  hoursAsked.value = null;
  if (!known || outcome === null) return;
  setUp({ hoursKnown: 'planned' });
  void keepOutcome(outcome);
}

/** Takes the last outcome back, with the reason on record, and goes on with its piece where it was. */
export async function takeBackOutcome(): Promise<void> {
  const last = lastTested.peek();
  if (busy || last === null) return;
  busy = true;
  try {
    const outcome = { about: 'endurance', which: last.endurance } as const;
    await putAside(outcome, 'taken back at once by whoever tested', recordedBy());
    keep(last.before);
    figureTyped.value = last.figure;
    lastTested.value = null;
    announce('Taken back. Go on with this piece.');
  } catch (error) {
    runTrouble.value = `Not taken back. ${sentenceOf(error)}`;
    announce(runTrouble.value);
  } finally {
    busy = false;
  }
}
