/** Running an endurance test: kept on this device step by step, and every outcome an entry of its own. */
import { computed, signal } from '@preact/signals';
import { type AbusePiece, piecesToAbuse } from '../../../../findings/bench/piecesToAbuse.ts';
import { ENDURANCE_TABLE } from '../../../../journal/kinds/endurance.ts';
import { checkRow } from '../../../../journal/rowCheck.ts';
import type { Protocol } from '../../../../methods/jacket/protocols/protocol.ts';
import { protocolOf } from '../../../../methods/jacket/protocols/protocols.ts';
import { splitTyped, unitText } from '../../../../units/typedText.ts';
import { freshName } from '../bench/freshName.ts';
import { signOf } from '../bench/names.ts';
import { room, roomUnit } from '../bench/room.ts';
import { announce } from '../bench/said.ts';
import { deviceName, recorder } from '../journal/device.ts';
import { folded, say } from '../journal/journal.ts';
import { isTexts, keptSignal } from '../kept.ts';
import {
  addStrokes,
  atStop,
  clockAmount,
  forNextPiece,
  freshRun,
  lookAt,
  type Run,
  readRun,
  strokes,
  takeBackStroke,
  toggleClock,
} from './runState.ts';

export type Outcome = 'failed' | 'survived';

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

export interface JustTested {
  endurance: string;
  words: string;
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

/** The row of an outcome. */
function rowOf(now: Run, specimen: string, amount: string, unit: string, outcome: Outcome): Record<string, string> {
  const warm = room.peek().trim();
  const looked = now.way === 'strokes' || now.way === 'timer' ? now.every.trim() : '';
  return {
    specimen,
    test: now.test.trim(),
    amount,
    unit,
    outcome,
    ...(looked === '' ? {} : { inspected_every: looked }),
    ...(now.stress.trim() === '' ? {} : { stress: now.stress.trim(), stress_unit: now.stressUnit }),
    ...(warm === '' ? {} : { temperature: warm, temperature_unit: roomUnit.peek() }),
    by: recorder.peek().trim() || deviceName(),
    at: new Date().toISOString(),
  };
}

const WHERE: Readonly<Record<string, string>> = {
  test: 'Name of the test',
  unit: 'Unit',
  stress: 'Load',
  inspected_every: 'Looked at every',
  temperature: 'Temperature',
};

function wrongWith(row: Record<string, string>, amountIs: string): string {
  const problem = checkRow(ENDURANCE_TABLE, row, { now: Date.now() })[0];
  if (problem === undefined) return '';
  const where = WHERE[problem.column] ?? amountIs;
  return `${where}: found ${problem.found}; expected ${problem.expected}. ${problem.advice ?? ''}`.trim();
}

/** Begins with the first piece, or says what of the set-up cannot be. */
export function begin(): void {
  const now = run.peek();
  if (now === null) return;
  const wrong =
    wrongWith(
      rowOf(now, 'x', now.way === 'once' ? now.exposure.trim() : '1', now.unit.trim(), 'survived'),
      'How much for every piece',
    ) ||
    (now.stopAt.trim() === '' ? '' : wrongWith(rowOf(now, 'x', now.stopAt.trim(), now.unit, 'survived'), 'Ended at'));
  runTrouble.value = wrong;
  if (wrong === '') setUp({ begun: true });
  else announce(wrong);
}

/** Adds strokes; says where to look, and where to stop. */
export function count(n: number): void {
  const before = run.peek();
  if (before === null || before.way !== 'strokes' || pieces.peek()?.inHand == null) return;
  alter((now) => addStrokes(now, n));
  const now = run.peek()!;
  const look = lookAt(now, strokes(before));
  if (look !== null) announce(`${look}: look now.`, { kept: true });
  lookNow.value = look;
  const [was, is] = [atStop(now, strokes(before)), atStop(now, strokes(now))];
  if (is && !was) announce(`${strokes(now)}: the test ends here.`, { kept: true });
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
  const row = rowOf(now, piece.specimen, amount, unit, outcome);
  const wrong = amount === '' || amount === '0' ? NOTHING[now.way] : wrongWith(row, 'Amount');
  runTrouble.value = wrong;
  if (wrong !== '') return announce(wrong);
  busy = true;
  const endurance = freshName('e');
  try {
    await say('endurance', { endurance, ...row });
    const how = outcome === 'failed' ? 'failed at' : 'survived';
    const words = `${signOf(trial, piece.specimen)} ${how} ${amount} ${unitText(unit) || unit}`;
    lastTested.value = { endurance, words, before: { ...now, specimen: piece.specimen }, figure: figureTyped.peek() };
    figureTyped.value = '';
    lookNow.value = null;
    alter(forNextPiece);
    announce(`Kept: ${words}.`, { kept: true });
  } catch (error) {
    runTrouble.value = `Not kept. ${error instanceof Error ? error.message : String(error)}`;
    announce(runTrouble.value);
  } finally {
    busy = false;
  }
}

/** Takes the last outcome back, with the reason on record, and goes on with its piece where it was. */
export async function takeBackOutcome(): Promise<void> {
  const last = lastTested.peek();
  if (busy || last === null) return;
  busy = true;
  try {
    await say('withdrawal', {
      withdrawal: freshName('w'),
      act: 'put aside',
      about: 'endurance',
      which: last.endurance,
      why: 'taken back at once by whoever tested',
      at: new Date().toISOString(),
      by: recorder.peek().trim() || deviceName(),
    });
    keep(last.before);
    figureTyped.value = last.figure;
    lastTested.value = null;
    announce('Taken back. Go on with this piece.');
  } catch (error) {
    runTrouble.value = `Not taken back. ${error instanceof Error ? error.message : String(error)}`;
    announce(runTrouble.value);
  } finally {
    busy = false;
  }
}
