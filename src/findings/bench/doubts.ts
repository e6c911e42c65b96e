import { cell } from '../../trial/cells.ts';
import type { Reading, Trial } from '../../trial/trial.ts';
import { type Question, questionFor } from './questionFor.ts';

/** A reading that may deserve a question. */
export interface Doubtful {
  reading: Reading;
  /** Changes whenever another answer may come of asking. */
  key: string;
  /** The question that it would be kept with today; null where there is none. */
  ask: () => Question | null;
}

/** The room's temperature has its own warning, and ohms without contacts their own list: both stand there all the time. */
const STANDS_ELSEWHERE: ReadonlySet<string> = new Set(['temperature', 'no-contacts']);
/** Readings further back than so many are not asked about any more. Ours. */
const MOST_ASKED = 2000;

/** The question about a reading that is to be kept, as far as it does not stand elsewhere anyway. */
export function doubtAbout(trial: Trial, row: Readonly<Record<string, string>>): Question | null {
  const question = questionFor(trial, { specimen: '', quantity: '', value: '', unit: '', ...row });
  return question === null || STANDS_ELSEWHERE.has(question.code) ? null : question;
}

/** Names of readings about which a question was answered: they stay as they are. */
export function answeredReadings({ notes }: Pick<Trial, 'notes'>): Set<string> {
  return new Set(
    notes.flatMap(({ about, which, row }) => (about === 'reading' && cell(row, 'answers') ? [which] : [])),
  );
}

/**
 * Every counted reading about which nobody has answered a question yet, each among the readings of its cable that were taken
 * before it. A doubt follows from the journal alone: whoever opens the trial finds the same ones.
 */
export function doubtful(trial: Trial): Doubtful[] {
  const answered = answeredReadings(trial);
  const before = new Map<string, { readings: Reading[]; mark: number }>();
  const context = new Map<string, string>();
  const all = trial.readings.flatMap((reading): Doubtful[] => {
    const { cable } = reading;
    const own = before.get(cable) ?? { readings: [], mark: 0 };
    if (!context.has(cable)) context.set(cable, contextOf(trial, cable));
    const earlier = [...own.readings];
    const key = `${reading.entry} ${earlier.length} ${own.mark} ${context.get(cable)}`;
    if (reading.standing !== 'counted') return [];
    own.readings.push(reading);
    own.mark = markOf(own.mark, reading.entry);
    before.set(cable, own);
    if (answered.has(reading.reading)) return [];
    // A mix-up put right gives it another piece than was typed.
    const row = { ...reading.row, specimen: reading.specimen };
    return [{ reading, key, ask: () => doubtAbout({ ...trial, readings: earlier }, row) }];
  });
  return all.slice(-MOST_ASKED);
}

/** What of a trial the questions about a cable rest on beside its readings. */
function contextOf(trial: Trial, cable: string): string {
  const described = trial.cables.filter((each) => each.cable === cable).map(({ entry }) => entry);
  const pieces = trial.specimens.filter((each) => each.cable === cable).map(({ entry }) => entry);
  const tools = trial.instruments.map(({ entry, limit, ownLimit }) => [
    entry,
    (ownLimit ?? limit).absolute,
    (ownLimit ?? limit).fraction,
  ]);
  return [...described, ...pieces, trial.targetTemperature ?? '', ...tools.flat()].join(' ');
}

/** Runs over the names of the earlier readings, so that other ones make another mark. */
function markOf(mark: number, entry: string): number {
  let next = mark;
  for (let i = 0; i < entry.length; i += 1) next = (Math.imul(next, 31) + entry.charCodeAt(i)) | 0;
  return next;
}
