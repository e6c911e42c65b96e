/** Everything that was put right in a trial, dated and in plain words. */

import type { Entry } from '../journal/entry.ts';
import { inOrder, mergeEntries } from '../journal/merge.ts';
import { rowKey, type TableShape } from '../journal/tableShape.ts';
import { tableOfKind } from '../journal/tables.ts';
import { capital } from '../units/capital.ts';
import { typedText } from '../units/typedText.ts';
import { cell, type Row } from './cells.ts';
import { columnWords } from './columnWords.ts';
import { pieceSign, whatWasRead } from './plainWords.ts';
import { rowName } from './rowName.ts';
import { withAside } from './setAside.ts';
import type { Retag, Trial, Withdrawal } from './trial.ts';

export interface Correction {
  what: 'replaced' | 'struck' | 'retagged' | 'changed' | 'put aside' | 'taken up again';
  /** The entry that corrects. */
  entry: string;
  /** When, ISO 8601 in UTC, by the clock of the device. */
  at: string;
  by: string;
  device: string;
  /** Cable concerned; null when it concerns none, or several. */
  cable: string | null;
  /** Readings concerned. */
  readings: string[];
  /** One plain sentence or two. */
  text: string;
}

/** Plans change without being wrong, a reveal, a seal and a reply correct nothing; strikes, repairs and
 * what is put aside tell for themselves. */
const NOT_CORRECTED: ReadonlySet<string> = new Set([
  'setting',
  'blinding',
  'strike',
  'retag',
  'withdrawal',
  'seal',
  'reply',
]);
const MOST_CHANGES_NAMED = 4;
const LONGEST_SHOWN = 60;

const quoted = (text: string): string => `"${text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text}"`;
const because = (why: string): string => (why === '' ? '' : ` Reason given: ${why}`);
const typedValue = (row: Row): string => typedText(cell(row, 'value'), cell(row, 'unit'));

type Told = Pick<Correction, 'what' | 'cable' | 'readings' | 'text'>;

const KIND_NAMES: Readonly<Record<string, string>> = {
  trial: 'The trial',
  cable: 'Cable',
  fitting: 'Fitting',
  instrument: 'Tool',
  check: 'Check',
  specimen: 'Piece',
  reading: 'Reading',
  judgement: 'Judgement',
  evidence: 'Look',
  endurance: 'Endurance row',
  note: 'Note',
};

/** `value from "93.1" to "39.1"`, for each column that differs. */
function changes(earlier: Row, later: Row): string[] {
  const columns = new Set([...Object.keys(earlier), ...Object.keys(later)]);
  return [...columns].sort().flatMap((name) => {
    const [was, is] = [cell(earlier, name), cell(later, name)];
    if (was === is) return [];
    const words = columnWords(name);
    if (was === '') return [`${words} is now ${quoted(is)}`];
    return [is === '' ? `${words} ${quoted(was)} taken back` : `${words} from ${quoted(was)} to ${quoted(is)}`];
  });
}

/** The thing that a row describes, as a person calls it. */
function called(kind: string, key: string, row: Row, trial: Trial): string {
  if (kind === 'cable') return trial.cables.find(({ cable }) => cable === key)?.name || key;
  if (kind === 'specimen') return pieceSign(trial, key);
  if (kind === 'reading') return `of the ${whatWasRead(trial, cell(row, 'specimen'), cell(row, 'quantity'))}`;
  return key.replaceAll('\u001f', ' with ');
}

function changed(
  shape: TableShape,
  key: string,
  earlier: Row,
  later: Row,
  { cableOf, trial }: { cableOf: CableOf; trial: Trial },
): Told | null {
  const differing = changes(earlier, later);
  if (differing.length === 0) return null;
  const named = shape.kind === 'trial' ? '' : ` ${called(shape.kind, key, later, trial)}`;
  const more = differing.length - MOST_CHANGES_NAMED;
  const listed = [...differing.slice(0, MOST_CHANGES_NAMED), ...(more > 0 ? [`${more} more`] : [])].join('; ');
  const cable = cell(later, 'cable') || cableOf.piece.get(cell(later, 'specimen')) || null;
  const readings = shape.kind === 'reading' ? [key] : [];
  return {
    what: 'changed',
    cable,
    readings,
    text: `${KIND_NAMES[shape.kind] ?? shape.kind}${named} was described anew: ${listed}.`,
  };
}

interface CableOf {
  piece: ReadonlyMap<string, string>;
  reading: ReadonlyMap<string, string>;
}

function replaced(row: Row, was: Row | undefined, cableOf: CableOf, trial: Trial): Told {
  const [reading, earlier] = [cell(row, 'reading'), cell(row, 'replaces')];
  const before = was ? ` ${typedValue(was)}` : ' a reading that is not on record';
  const what = whatWasRead(trial, cell(row, 'specimen'), cell(row, 'quantity'));
  const text = `${capital(what)}:${before} was replaced by ${typedValue(row)}.${because(cell(row, 'why'))}`;
  return { what: 'replaced', cable: cableOf.reading.get(reading) || null, readings: [earlier, reading], text };
}

function struck(row: Row, was: Row | undefined, cableOf: CableOf, trial: Trial): Told {
  const reading = cell(row, 'reading');
  const what = was
    ? `${capital(whatWasRead(trial, cell(was, 'specimen'), cell(was, 'quantity')))}: ${typedValue(was)}`
    : `Reading ${reading}`;
  const text = `${what} was struck out.${because(cell(row, 'why'))}`;
  return { what: 'struck', cable: cableOf.reading.get(reading) || null, readings: [reading], text };
}

function retagged(retag: Retag, trial: Trial): Told {
  const moved = trial.readings.filter(({ retagged: by }) => by.includes(retag.retag)).map(({ reading }) => reading);
  const { kind, why } = retag;
  const [specimen, becomes] = [pieceSign(trial, retag.specimen), pieceSign(trial, retag.becomes)];
  const count = moved.length === 1 ? '1 reading' : `${moved.length} readings`;
  const done =
    kind === 'swap'
      ? `Pieces ${specimen} and ${becomes} were swapped: ${count} changed places.`
      : `What was recorded on piece ${specimen} belongs to ${becomes}: ${count} moved.`;
  return { what: 'retagged', cable: null, readings: moved, text: `${done}${because(why)}` };
}

/** What an act was about, as a person calls it: `Look 3fa2, cable quill`, `Cable quill`. */
function thingNamed({ about, which, triedWith }: Withdrawal, trial: Trial): string {
  if (about === 'trial') return 'The trial';
  if (about === 'judgement' || about === 'endurance') return rowNamed(about, which, trial);
  const cable = about === 'evidence' ? lookedAt(which, trial) : '';
  const tried = triedWith === null ? '' : `, as tried with ${triedWith}`;
  const named = about === 'evidence' ? which : called(about, which, {}, trial);
  return `${KIND_NAMES[about] ?? about} ${named}${cable === '' ? '' : ` at cable ${cable}`}${tried}`;
}

/** A judgement or an outcome by what it says: `Judgement of KR and VN`, `Outcome of KR in scrape, 120 strokes`. */
function rowNamed(about: 'judgement' | 'endurance', which: string, trial: Trial): string {
  const row = rowWith(about, which, trial);
  if (row === undefined) return `${KIND_NAMES[about]} ${which}`;
  const sign = (column: string) => pieceSign(trial, cell(row, column));
  return about === 'judgement'
    ? `Judgement of ${sign('left')} and ${sign('right')}`
    : `Outcome of ${sign('specimen')} in ${cell(row, 'test')}, ${cell(row, 'amount')} ${cell(row, 'unit')}`;
}

/** The row of that name, whether it stands aside or not. */
function rowWith(about: 'judgement' | 'endurance' | 'evidence', which: string, trial: Trial): Row | undefined {
  if (about === 'judgement')
    return withAside(trial, about, trial.judgements).find(({ row }) => cell(row, 'judgement') === which)?.row;
  const standing = about === 'endurance' ? trial.endurance : trial.evidence;
  return withAside(trial, about, standing).find(({ row }) => rowName(about, row) === which)?.row;
}

/** The cable that a look of that name was at; empty when it is not on record. */
const lookedAt = (name: string, trial: Trial): string => cell(rowWith('evidence', name, trial) ?? {}, 'cable');

/** The cable that an act was about; empty when it was about none, or about nothing on record. */
function cableOfAct({ about, which }: Withdrawal, trial: Trial, { piece }: CableOf): string {
  if (about === 'cable') return which;
  if (about === 'specimen') return piece.get(which) ?? '';
  if (about === 'evidence') return lookedAt(which, trial);
  if (about === 'endurance') return piece.get(cell(rowWith(about, which, trial) ?? {}, 'specimen')) ?? '';
  return '';
}

function putAside(act: Withdrawal, trial: Trial, cableOf: CableOf): Told {
  const what = act.again ? 'taken up again' : 'put aside';
  const text = `${thingNamed(act, trial)} was ${what}.${because(act.why)}`;
  return { what, cable: cableOfAct(act, trial, cableOf) || null, readings: [], text };
}

/** What one entry corrects, given what was said before it. */
class Teller {
  readonly #said = new Map<string, Map<string, Row>>();
  /** Every reading as said last: by the clock of another device, a correction may stand before what it corrects. */
  readonly #readings: ReadonlyMap<string, Row>;
  readonly #retags: ReadonlyMap<string, Retag>;
  readonly #withdrawals: ReadonlyMap<string, Withdrawal>;
  readonly #cableOf: CableOf;
  readonly #trial: Trial;

  constructor(entries: readonly Entry[], trial: Trial) {
    this.#trial = trial;
    this.#readings = new Map(
      entries.filter(({ kind }) => kind === 'reading').map(({ body }) => [cell(body, 'reading'), body]),
    );
    this.#retags = new Map(trial.retags.map((retag) => [retag.entry, retag]));
    this.#withdrawals = new Map(trial.withdrawals.map((act) => [act.entry, act]));
    this.#cableOf = {
      piece: new Map(
        withAside(trial, 'specimen', trial.specimens).map(({ row }) => [cell(row, 'specimen'), cell(row, 'cable')]),
      ),
      reading: new Map(trial.readings.map(({ reading, cable }) => [reading, cable])),
    };
  }

  /** The row of that key as said before, and from now on this one. */
  #earlier(kind: string, key: string, row: Row): Row | undefined {
    const said = this.#said.get(kind) ?? new Map<string, Row>();
    this.#said.set(kind, said);
    const earlier = said.get(key);
    said.set(key, row);
    return earlier;
  }

  #typed(reading: string): Row | undefined {
    return this.#said.get('reading')?.get(reading) ?? this.#readings.get(reading);
  }

  tell({ id, kind, body }: Entry): Told[] {
    const shape = tableOfKind(kind);
    const key = shape && rowKey(shape, body);
    if (!shape || key === null) return [];
    const earlier = this.#earlier(kind, key, body);
    const told: (Told | null)[] = [];
    if (earlier && !NOT_CORRECTED.has(kind))
      told.push(changed(shape, key, earlier, body, { cableOf: this.#cableOf, trial: this.#trial }));
    const replaces = kind === 'reading' ? cell(body, 'replaces') : '';
    if (replaces !== '' && replaces !== key && cell(earlier ?? {}, 'replaces') !== replaces)
      told.push(replaced(body, this.#typed(replaces), this.#cableOf, this.#trial));
    if (kind === 'strike' && (!earlier || cell(earlier, 'why') !== cell(body, 'why')))
      told.push(struck(body, this.#typed(key), this.#cableOf, this.#trial));
    const retag = this.#retags.get(id);
    if (retag) told.push(retagged(retag, this.#trial));
    const act = this.#withdrawals.get(id);
    if (act) told.push(putAside(act, this.#trial, this.#cableOf));
    return told.filter((one) => one !== null);
  }
}

/**
 * The corrections of a trial in the order of its journal: readings replaced or struck out, pieces swapped or tags put right,
 * things put aside or taken up again, and rows described anew. It names readings, pieces and cables as they are named, so a trial that is blind must not show it.
 *
 * A package carries only the last row of each name, so after an import the rows described anew are no longer known; replaced,
 * struck and repaired readings are.
 *
 * @param trial the fold of the same entries
 */
export function corrections(entries: readonly Entry[], trial: Trial): Correction[] {
  const ordered = inOrder(entries) ? entries : mergeEntries(entries);
  const teller = new Teller(ordered, trial);
  return ordered.flatMap((entry) =>
    teller.tell(entry).map((told) => ({
      ...told,
      entry: entry.id,
      at: entry.at,
      by: entry.by || cell(entry.body, 'by'),
      device: entry.device,
    })),
  );
}
