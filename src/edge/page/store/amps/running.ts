/** The run that is looked at: answers kept on this device by trial, and what they come to. */
import { computed, signal } from '@preact/signals';
import { overloadProblems } from '../../../../methods/current/runCheck/problems.ts';
import type { RunCable, RunQuestion } from '../../../../methods/current/runCheck/question.ts';
import { type RunCheck, runCheck } from '../../../../methods/current/runCheck/runCheck.ts';
import { capital } from '../../../../units/capital.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { ampsData } from './ampsData.ts';
import { type AnswerName, answersFrom, FIRST_ANSWERS } from './runAnswers.ts';
import { nominalFor, overloadFrom, questionFrom, withRating } from './runQuestion.ts';
import { following, understood, unreadable, withUnit } from './runTyped.ts';

/** By trial, as JSON: a reload, a flat battery and a closed page change no answer. */
const kept = keptSignal<Record<string, string>>('cupel.amps.run', {}, isTexts);

/** The trial whose run is open. */
export const runTrial = signal('');

export const answers = computed(() => answersFrom(kept.value[runTrial.value]));

export function answer(part: Partial<Record<AnswerName, string>>): void {
  const before = answers.peek();
  const next = { ...before, ...following(before, part) };
  kept.value = { ...kept.peek(), [runTrial.peek()]: JSON.stringify(next) };
}

/** An answer that is typed to its end: a unit behind the figure goes where the form has it. */
export function answerTyped(name: AnswerName, text: string): void {
  answer(withUnit(answers.peek(), name, text));
}

/** Everything as it stands at first. */
export function startOver(): void {
  answer(FIRST_ANSWERS);
}

/** The answers as they are understood, also while a unit is still being typed. */
export const asUnderstood = computed(() => understood(answers.value));

/** A of the overload that is asked about; null where it is the load’s own. */
export const overload = computed(() => overloadFrom(asUnderstood.value));

/** Measured cables as candidates, rated as was answered. */
export const candidates = computed<RunCable[]>(() => {
  const found = ampsData.value?.answer?.candidates.cables ?? [];
  return withRating(found, asUnderstood.value);
});

const nominal = computed<RunCable[]>(() => nominalFor(candidates.value, asUnderstood.value));

export interface Looked {
  question: RunQuestion;
  check: RunCheck;
}

/** What the answers come to; problems alone where they cannot be read or are refused. */
export const looked = computed<Looked>(() => {
  const question = questionFrom(asUnderstood.value);
  const wrong = [...unreadable(asUnderstood.value), ...overloadProblems(overload.value)];
  if (wrong.length > 0) return { question, check: unanswered(wrong) };
  try {
    return { question, check: runCheck(question, candidates.value, nominal.value) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { question, check: unanswered([sentence(error)]) };
  }
});

const unanswered = (problems: string[]): RunCheck => ({
  problems,
  answers: [],
  leastSize: null,
  meets: [],
  curves: [],
});

const sentence = ({ message }: Error) => `${capital(message)}.`;
