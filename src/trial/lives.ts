/** The life of every reading: who said it, what replaced it, what struck it out, which repair moved it. */
import type { Entry } from '../journal/entry.ts';
import { inOrder, mergeEntries } from '../journal/merge.ts';
import { typedText } from '../units/typedText.ts';
import { cell } from './cells.ts';
import { NOT_RETAGGED } from './repoint.ts';
import type { Reading, Trial, Withdrawal } from './trial.ts';

export type LifeWhat = 'said' | 'said again' | 'replaced' | 'struck' | 'retagged' | 'put aside' | 'taken up again';

/** One thing that happened to a reading. */
export interface LifeEvent {
  what: LifeWhat;
  /** The entry that says so. */
  entry: string;
  /** When it was said, ISO 8601 in UTC, by the clock of the device. */
  at: string;
  by: string;
  device: string;
  /** Its reason in the recorder's words; empty when none was given. */
  why: string;
  /** `said`: the value as typed with its unit; `replaced`: the reading that took its place; `retagged`: the repair; else empty. */
  with: string;
}

export interface ReadingLife {
  reading: string;
  /** The piece as typed last. */
  typedSpecimen: string;
  /** The reading as it stands now; null when its row cannot be read. */
  now: Reading | null;
  /** In the order of the journal. */
  events: LifeEvent[];
}

function event(what: LifeWhat, entry: Entry, more: Partial<LifeEvent> = {}): LifeEvent {
  const { id, at, device, body } = entry;
  return { what, entry: id, at, by: entry.by || cell(body, 'by'), device, why: '', with: '', ...more };
}

const typedValue = ({ body }: Entry): string => typedText(cell(body, 'value'), cell(body, 'unit'));

class Lives {
  readonly byReading = new Map<string, ReadingLife>();
  readonly #now: ReadonlyMap<string, Reading>;
  /** What was to happen to readings that were not said yet: another device's entry can come before, by its clock. */
  readonly #early = new Map<string, LifeEvent[]>();

  constructor(trial: Trial) {
    this.#now = new Map(trial.readings.map((reading) => [reading.reading, reading]));
  }

  said(entry: Entry): void {
    const reading = cell(entry.body, 'reading');
    const why = cell(entry.body, 'why');
    const life = this.byReading.get(reading);
    if (life) {
      life.typedSpecimen = cell(entry.body, 'specimen');
      life.events.push(event('said again', entry, { with: typedValue(entry), why }));
    } else {
      const events = [...(this.#early.get(reading) ?? []), event('said', entry, { with: typedValue(entry), why })];
      const typedSpecimen = cell(entry.body, 'specimen');
      this.byReading.set(reading, { reading, typedSpecimen, now: this.#now.get(reading) ?? null, events });
    }
    const replaces = cell(entry.body, 'replaces');
    if (replaces !== '' && replaces !== reading)
      this.happened(replaces, event('replaced', entry, { with: reading, why }));
  }

  happened(reading: string, what: LifeEvent): void {
    const events = this.byReading.get(reading)?.events ?? this.#early.get(reading);
    if (events) events.push(what);
    else this.#early.set(reading, [what]);
  }
}

/** Readings by the repairs that moved them. */
function movedBy(trial: Trial): Map<string, string[]> {
  const moved = new Map<string, string[]>();
  for (const { reading, retagged } of trial.readings) {
    if (retagged === NOT_RETAGGED) continue;
    for (const retag of new Set(retagged)) moved.set(retag, [...(moved.get(retag) ?? []), reading]);
  }
  return moved;
}

/** Readings that went aside, or came back, with their piece or cable. */
function concernedBy({ about, which }: Withdrawal, trial: Trial): string[] {
  if (about !== 'specimen' && about !== 'cable') return [];
  return trial.readings.filter((reading) => reading[about] === which).map(({ reading }) => reading);
}

/**
 * The life of every reading of a journal, by its name, in the order in which they were first said.
 *
 * @param trial the fold of the same entries: it knows where each reading stands and which repairs moved it. Of a repair that
 *   was said more than once, the last is told
 */
export function readingLives(entries: readonly Entry[], trial: Trial): Map<string, ReadingLife> {
  const lives = new Lives(trial);
  const moved = movedBy(trial);
  const acts = new Map(trial.withdrawals.map((act) => [act.entry, act]));
  const lastSaid = new Map(trial.retags.map(({ entry, retag }) => [entry, retag]));
  for (const entry of inOrder(entries) ? entries : mergeEntries(entries)) {
    const why = cell(entry.body, 'why');
    if (entry.kind === 'reading') lives.said(entry);
    else if (entry.kind === 'strike') lives.happened(cell(entry.body, 'reading'), event('struck', entry, { why }));
    else if (entry.kind === 'withdrawal') {
      const act = acts.get(entry.id);
      const what = act?.again ? 'taken up again' : 'put aside';
      for (const reading of act ? concernedBy(act, trial) : []) lives.happened(reading, event(what, entry, { why }));
    } else if (entry.kind === 'retag') {
      const retag = lastSaid.get(entry.id);
      for (const reading of (retag !== undefined && moved.get(retag)) || [])
        lives.happened(reading, event('retagged', entry, { why, with: retag! }));
    }
  }
  return lives.byReading;
}
