/** An entry in plain words: what, without names that are hidden. */
import type { Entry } from '../../../../journal/entry.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { pieceWords, quantityHead, valueWords } from '../../store/bench/names.ts';

const NAMES: Readonly<Record<string, string>> = {
  trial: 'Trial described',
  cable: 'Cable described',
  fitting: 'Fitting described',
  instrument: 'Tool described',
  check: 'Tool checked',
  specimen: 'Piece described',
  evidence: 'Looked at',
  reading: 'Reading',
  strike: 'Struck out',
  retag: 'Mix-up put right',
  judgement: 'Judgement',
  endurance: 'Endurance',
  current: 'Current',
  note: 'Note',
  setting: 'Plan',
  blinding: 'Blinding',
  withdrawal: 'Put aside',
};

export interface Said {
  what: string;
  /** What exactly; empty where the name alone says it. */
  detail: string;
  why: string;
}

/** What an entry says. `trial` is the fold of the journal it is from. */
export function whatWasSaid({ kind, body }: Entry, trial: Trial): Said {
  const cell = (name: string) => (body[name] ?? '').trim();
  const said = (detail: string): Said => ({
    what: NAMES[kind] ?? `Entry of the kind "${kind}"`,
    detail,
    why: cell('why'),
  });
  const piece = (name: string) => pieceWords(trial, name);
  const hidden = (words: string) => (trial.blinding.blind ? '' : words);
  switch (kind) {
    case 'reading':
      return said(
        `${valueWords(cell('value'), cell('unit'))}, ${piece(cell('specimen'))}, ${quantityHead(cell('quantity')).toLowerCase()}`,
      );
    case 'strike':
      return said(readingWords(trial, cell('reading')));
    case 'retag':
      return said(
        `${piece(cell('specimen'))} ${cell('kind') === 'swap' ? 'and' : 'is really'} ${piece(cell('becomes'))}`,
      );
    case 'note':
      return said(
        [cell('shot'), cell('photo') === '' ? '' : 'photo', cell('text')].filter((part) => part !== '').join(', '),
      );
    case 'setting':
      return said(`${cell('setting').replaceAll('_', ' ')}: ${cell('value')}`);
    case 'blinding':
      return said([cell('act'), cell('how')].filter((part) => part !== '').join(', '));
    case 'specimen':
      return said(piece(cell('specimen')));
    case 'instrument':
    case 'check':
      return said(cell('instrument'));
    case 'cable':
    case 'evidence':
      return said(
        hidden(
          [cell('maker'), cell('model'), cell('cable'), cell('look').replaceAll('_', ' '), cell('seen')]
            .filter((part) => part !== '')
            .join(', '),
        ),
      );
    case 'withdrawal': {
      const again = cell('act').toLowerCase() === 'taken up again';
      return { ...said(thingWords(cell('about'), cell('which'), trial)), ...(again ? { what: 'Taken up again' } : {}) };
    }
    case 'trial':
      return said(cell('title'));
    default:
      return said('');
  }
}

const THINGS: Readonly<Record<string, string>> = { trial: 'the trial', instrument: 'tool', evidence: 'look' };

/** What was put aside: `tool scale`, `KR, piece to take apart`. A cable's name is left out while names are hidden. */
function thingWords(about: string, which: string, trial: Trial): string {
  if (about === 'specimen') return pieceWords(trial, which);
  const isHidden = about === 'trial' || (about === 'cable' && trial.blinding.blind);
  return [THINGS[about] ?? about, isHidden ? '' : which].join(' ').trim();
}

/** A reading as typed, by its name. */
export function readingWords(trial: Trial, reading: string): string {
  const found = trial.readings.find((each) => each.reading === reading);
  if (found === undefined) return `reading ${reading}`;
  const { row, specimen, quantity } = found;
  return `${valueWords(row.value ?? '', row.unit ?? '')}, ${pieceWords(trial, specimen)}, ${quantityHead(quantity).toLowerCase()}`;
}

/** `2026-10-03 14:07`, by the clock of whoever looks. */
export function whenWords(at: string): string {
  const moment = new Date(at);
  if (Number.isNaN(moment.getTime())) return at;
  const two = (value: number) => String(value).padStart(2, '0');
  const day = `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
  return `${day} ${two(moment.getHours())}:${two(moment.getMinutes())}`;
}
