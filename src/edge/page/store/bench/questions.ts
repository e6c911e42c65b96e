/**
 * Doubts about readings that were kept. A reading counts until somebody says otherwise, and its question stands until then: on
 * every device, because it follows from the journal, as does its answer.
 */
import { computed, effect, signal } from '@preact/signals';
import { answeredReadings, type Doubtful, doubtful } from '../../../../findings/bench/doubts.ts';
import type { Question } from '../../../../findings/bench/questionFor.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { folded, say } from '../journal/journal.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { freshName } from './freshName.ts';
import { type Chosen, inHand, takeUp } from './inHand.ts';
import { valueWords } from './names.ts';
import { announce } from './said.ts';
import { type JustKept, lastKept } from './sitting.ts';

export interface OpenQuestion {
  about: Omit<JustKept, 'pressed'>;
  code: string;
  text: string;
}

/** What was found for each reading, by what the answer rests on: only what changed is asked anew. */
let known = new Map<string, Question | null>();
const found = signal<readonly OpenQuestion[]>([]);
/** The question of the reading kept last, so that it stands there with the next picture. */
const justAsked = signal<{ reading: string; question: Question } | null>(null);
/** Readings whose answer is on its way into the journal. */
const answering = signal<ReadonlySet<string>>(new Set());

/** Open questions of this trial, the newest first. One is answered when its reading is kept, replaced or struck out. */
export const openQuestions = computed<readonly OpenQuestion[]>(() => {
  const trial = folded.value;
  if (trial === null) return [];
  const own = new Map(trial.readings.map((each) => [each.reading, each]));
  const answered = answeredReadings(trial);
  const stands = ({ about: { reading } }: OpenQuestion) =>
    own.get(reading)?.standing === 'counted' && !answered.has(reading) && !answering.value.has(reading);
  const now = justAsked.value;
  const reading = now === null ? undefined : own.get(now.reading);
  const fresh =
    now === null || reading === undefined || found.value.some(({ about }) => about.reading === now.reading)
      ? []
      : [questionOf(reading, now.question)];
  return [...fresh, ...found.value].filter(stands);
});

/** The question about the reading just kept; null when there is none. */
export const asked = computed<OpenQuestion | null>(
  () => openQuestions.value.find(({ about }) => about.reading === lastKept.value?.reading) ?? null,
);

/** The reading that the next one is to replace, after "measure again", and what was in hand when that was said. */
export const again = signal<(OpenQuestion['about'] & { backTo: Chosen | null }) | null>(null);

/** The question about a reading that was just kept. */
export function ask(reading: string, question: Question): void {
  justAsked.value = { reading, question };
}

/** Answers a question, for every device: the reading stays as it is. */
export function keepIt({ about, code, text }: OpenQuestion): void {
  answering.value = new Set([...answering.value, about.reading]);
  const note = { note: freshName('n'), about: 'reading', which: about.reading, answers: code };
  say('note', { ...note, text: `Asked and kept as it is. ${text}`, at: new Date().toISOString() }).catch((error) => {
    answering.value = new Set([...answering.value].filter((each) => each !== about.reading));
    announce(`Not kept. ${sentenceOf(error)}`);
  });
}

/** Takes the piece up again: the next reading on it replaces the one in doubt, and until then the question stands. */
export function measureAgain({ about }: OpenQuestion): void {
  const now = inHand.value?.item;
  takeUp(about);
  again.value = { ...about, backTo: now === undefined ? null : { specimen: now.specimen, quantity: now.quantity } };
}

const questionOf = ({ reading, specimen, quantity, row }: Trial['readings'][number], { code, text }: Question) => ({
  about: { reading, specimen, quantity, shown: valueWords(row.value ?? '', row.unit ?? '') },
  code,
  text,
});

/** Works for no longer than this at a time, ms: what is typed meanwhile is never kept waiting. */
const AT_A_TIME = 6;
/** Begins so long after an entry, ms: what was just typed is painted first. */
const PAUSE = 120;

/** Looks for open questions of the open trial, a little at a time after every entry; answers the way to stop. */
export function followQuestions(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = effect(() => {
    const trial = folded.value;
    clearTimeout(timer);
    if (trial === null) return;
    timer = setTimeout(() => {
      const all = doubtful(trial);
      const next = new Map<string, Question | null>();
      const goOn = (place: number) => {
        const reached = askSome(all, place, next);
        if (reached < all.length) timer = setTimeout(() => goOn(reached));
        else tell(all, next);
      };
      goOn(0);
    }, PAUSE);
  });
  return () => {
    stop();
    clearTimeout(timer);
  };
}

/** Asks about readings from one on until the time is over; answers where to go on. */
function askSome(all: readonly Doubtful[], from: number, into: Map<string, Question | null>): number {
  const until = performance.now() + AT_A_TIME;
  let place = from;
  while (place < all.length && performance.now() < until) {
    const { key, ask: askNow } = all[place]!;
    const before = known.get(key);
    const question = before === undefined ? askNow() : before;
    // Known at once: a reading typed meanwhile begins the round anew, and what was asked is not asked again.
    known.set(key, question);
    into.set(key, question);
    place += 1;
  }
  return place;
}

function tell(all: readonly Doubtful[], questions: Map<string, Question | null>): void {
  known = questions;
  found.value = all
    .flatMap(({ reading, key }) => {
      const question = questions.get(key);
      return question ? [questionOf(reading, question)] : [];
    })
    .reverse();
}
