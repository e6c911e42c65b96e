/** The run that is looked at: answers kept on this device by trial, and what they come to. */
import { computed, signal } from '@preact/signals';
import type { RunCable, RunQuestion } from '../../../../methods/current/runCheck/question.ts';
import { type RunCheck, runCheck } from '../../../../methods/current/runCheck/runCheck.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { ampsData } from './ampsData.ts';
import {
  type AnswerName,
  answersFrom,
  FIRST_ANSWERS,
  following,
  nominalFor,
  questionFrom,
  unreadable,
  withRating,
} from './runAnswers.ts';

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

/** Everything as it stands at first. */
export function startOver(): void {
  answer(FIRST_ANSWERS);
}

/** Measured cables as candidates, rated as was answered. */
export const candidates = computed<RunCable[]>(() => {
  const found = ampsData.value?.answer?.candidates.cables ?? [];
  return withRating(found, answers.value);
});

const nominal = computed<RunCable[]>(() => nominalFor(candidates.value, answers.value));

export interface Looked {
  question: RunQuestion;
  check: RunCheck;
}

/** What the answers come to; problems alone where they cannot be read or are refused. */
export const looked = computed<Looked>(() => {
  const question = questionFrom(answers.value);
  const wrong = unreadable(answers.value);
  if (wrong.length > 0)
    return { question, check: { problems: wrong, answers: [], leastSize: null, meets: [], curves: [] } };
  try {
    return { question, check: runCheck(question, candidates.value, nominal.value) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { question, check: { problems: [sentence(error)], answers: [], leastSize: null, meets: [], curves: [] } };
  }
});

const sentence = ({ message }: Error) => `${message.charAt(0).toUpperCase()}${message.slice(1)}.`;
