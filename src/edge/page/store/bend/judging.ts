/** Judging pairs: the pair in hand, who judges and how blinded, and every answer as an entry of its own. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { computed, signal } from '@preact/signals';
import { planSettings } from '../../../../findings/plan/settings.ts';
import { nextPair, roundOf } from '../../../../methods/flex/pairs/nextPair.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { freshName } from '../bench/freshName.ts';
import { room, roomUnit } from '../bench/room.ts';
import { announce } from '../bench/said.ts';
import { recordedBy, recorder } from '../journal/device.ts';
import { folded, say } from '../journal/journal.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { putAside } from '../putAside.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { answerWords } from './answerWords.ts';
import { judgedSoFar, piecesToJudge } from './judgedPieces.ts';

export type Answer = 'left' | 'right' | 'same';

/** Two pieces by name, as they are handed over. */
export interface PairInHand {
  left: string;
  right: string;
  /** Handed over once more because the answer before was taken back. */
  again: boolean;
}

/** An answer that was just kept. */
export interface JustJudged {
  judgement: string;
  left: string;
  right: string;
  /** `KR bends more easily than VN`. */
  words: string;
}

/** The pair to be judged now. It stays in hand while others answer elsewhere. */
export const pairInHand = signal<PairInHand | null>(null);
/** What was answered here since judging was opened and not taken back, the last one last. */
const answered = signal<readonly JustJudged[]>([]);
/** The answer that an undo would take back; null with none left. */
export const lastJudged = computed<JustJudged | null>(() => answered.value[answered.value.length - 1] ?? null);
export const judgeTrouble = signal('');

/** `judge`: the name on this device. `how <trial>`: how it is blinded here, where that differs from the plan. */
const kept = keptSignal<Record<string, string>>('cupel.bend.judging', {}, isTexts);

/** Who judges on this device: as named here, else who records, else the device itself, so that judges are told apart. */
export const judgeName = computed(() => kept.value.judge ?? recorder.value);
const saidBy = () => judgeName.peek().trim() || recordedBy();

/** Names the judge; the next pair is then that judge's. */
export function nameJudge(name: string): void {
  kept.value = { ...kept.value, judge: name.slice(0, 100) };
}

/** How judges are kept from knowing: as said on this device for this trial, else as planned; open where nobody said. */
export const blindedHow = computed(() => {
  const trial = folded.value;
  if (trial === null) return 'open';
  return kept.value[`how ${trial.trial}`] ?? (planSettings(trial.settings).blindHow || 'open');
});

export function sayBlinded(how: string): void {
  const trial = folded.peek();
  if (trial !== null) kept.value = { ...kept.value, [`how ${trial.trial}`]: how };
}

const seedOf = (trial: string) => bytesToHex(sha256(utf8ToBytes(`pairs\n${trial}`)));

/** What this judge was handed, and the judge's number. */
function ofJudge(trial: Trial) {
  const { pieces } = piecesToJudge(trial);
  const soFar = judgedSoFar(trial, pieces);
  const known = soFar.judges.indexOf(saidBy());
  return { pieces, soFar, judge: known < 0 ? soFar.judges.length : known };
}

/** Takes up the next pair of this judge. */
export function takeNextPair(): void {
  const trial = folded.peek();
  if (trial === null) return;
  const { pieces, soFar, judge } = ofJudge(trial);
  if (pieces.length < 2) {
    pairInHand.value = null;
    return;
  }
  const next = nextPair(pieces.length, soFar.handed, { judge, seed: seedOf(trial.trial) });
  pairInHand.value = {
    left: pieces[next.left]!.piece.specimen,
    right: pieces[next.right]!.piece.specimen,
    again: false,
  };
}

/** Takes up a pair that somebody chose; says why not when both pieces are of one cable. */
export function choosePair(left: string, right: string): void {
  const cableOf = (name: string) => folded.peek()?.specimens.find((each) => each.specimen === name)?.cable;
  judgeTrouble.value =
    cableOf(left) === cableOf(right)
      ? 'Found two pieces of one cable, which say nothing of cables; choose another.'
      : '';
  if (judgeTrouble.value === '') pairInHand.value = { left, right, again: false };
}

let busy = false;

/** Keeps an answer on this device and takes up the next pair. Further answers wait until it is kept. */
export async function judge(result: Answer): Promise<void> {
  const [pair, trial] = [pairInHand.peek(), folded.peek()];
  if (busy || pair === null || trial === null) return;
  busy = true;
  judgeTrouble.value = '';
  const { soFar, judge: number } = ofJudge(trial);
  const own = soFar.handed.filter((each) => each.judge === number);
  const round = String(roundOf(piecesToJudge(trial).pieces.length, own) + 1);
  const judgement = freshName('j');
  const warm = room.peek().trim();
  try {
    await say('judgement', {
      judgement,
      left: pair.left,
      right: pair.right,
      result,
      by: saidBy(),
      round,
      at: new Date().toISOString(),
      blinded: blindedHow.peek(),
      ...(warm === '' ? {} : { temperature: warm, temperature_unit: roomUnit.peek() }),
    });
    const words = answerWords(trial, pair, result);
    answered.value = [...answered.peek(), { judgement, left: pair.left, right: pair.right, words }];
    announce(`Kept: ${words}.`, { kept: true });
    takeNextPair();
  } catch (error) {
    judgeTrouble.value = `Not kept. ${sentenceOf(error)}`;
    announce(judgeTrouble.value);
  } finally {
    busy = false;
  }
}

/** Takes the last answer back, with the reason on record, and hands its pair over once more; again for the one before it. */
export async function undoJudgement(): Promise<void> {
  const last = lastJudged.peek();
  if (busy || last === null) return;
  busy = true;
  try {
    await putAside({ about: 'judgement', which: last.judgement }, 'undone at once by whoever judged', saidBy());
    pairInHand.value = { left: last.left, right: last.right, again: true };
    answered.value = answered.peek().slice(0, -1);
    announce('Taken back. Judge this pair again.');
  } catch (error) {
    judgeTrouble.value = `Not taken back. ${sentenceOf(error)}`;
    announce(judgeTrouble.value);
  } finally {
    busy = false;
  }
}

/** Lets go of everything, as when judging is opened. */
export function beginJudging(): void {
  pairInHand.value = null;
  answered.value = [];
  judgeTrouble.value = '';
}
