/** An entry in plain words: what, without names that are hidden. */
import type { Entry } from '../../../../journal/entry.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { pieceWords, quantityHead, valueWords } from '../../store/bench/names.ts';
import { checkWords } from '../../store/plan/checkWords.ts';
import { thingWords } from './thingWords.ts';

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
  seal: 'Part sealed',
  reply: 'A maker’s word',
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
  const said = (...details: string[]): Said => ({
    what: NAMES[kind] ?? `Entry of the kind "${kind}"`,
    detail: details.filter((part) => part !== '').join(', '),
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
      return said(`${settingWords(cell('setting'))}: ${cell('value') || 'as usual'}`);
    case 'blinding':
      return said(BLINDED[cell('act').toLowerCase()] ?? cell('act'), cell('how'));
    case 'specimen':
      return said(piece(cell('specimen')));
    case 'instrument':
      return said(cell('instrument'));
    case 'check':
      return said(cell('instrument'), checkWords(body));
    case 'cable':
    case 'evidence':
      return said(
        hidden(
          [cableName(cell, trial), cell('look').replaceAll('_', ' '), cell('seen')]
            .filter((part) => part !== '')
            .join(', '),
        ),
      );
    case 'withdrawal': {
      const again = cell('act').toLowerCase() === 'taken up again';
      return { ...said(thingWords(cell('about'), cell('which'), trial)), ...(again ? { what: 'Taken up again' } : {}) };
    }
    case 'judgement':
      return said(
        `${piece(cell('left'))} and ${piece(cell('right'))}: ${JUDGED[cell('result').toLowerCase()] ?? cell('result')}`,
      );
    case 'endurance':
      return said(
        piece(cell('specimen')),
        cell('test').replaceAll('_', ' '),
        valueWords(cell('amount'), cell('unit')),
        cell('outcome'),
      );
    case 'current':
      return said(piece(cell('specimen')), valueWords(cell('current_A'), 'A'));
    case 'fitting':
      return said(cell('fitting'), cell('tried'));
    case 'trial':
      return said(cell('title'));
    case 'seal':
      return said(cell('part'), cell('title'), cell('places'));
    case 'reply':
      return said(hidden(cableName(cell, trial)), replyWords(cell));
    default:
      return said('');
  }
}

const JUDGED: Readonly<Record<string, string>> = {
  left: 'the first bends more easily',
  right: 'the second bends more easily',
  same: 'alike',
};

const BLINDED: Readonly<Record<string, string>> = {
  blind: 'from here on by codes',
  show: 'names shown to the one who cuts; the others go on by codes',
  reveal: 'names revealed',
};

/** Settings of the plan as Plan calls them; the others by their own words. */
const SETTINGS: Readonly<Record<string, string>> = {
  specimens_each: 'pieces to take apart of each cable',
  repeats: 'readings of each quantity',
  bend_pieces: 'pieces to bend of each cable',
  abuse_pieces: 'pieces to abuse of each cable',
  apart_mm: 'length of a piece to take apart, mm',
  bend_mm: 'length of a piece to bend, mm',
  abuse_mm: 'length of a piece to abuse, mm',
  kept_mm: 'length kept back, mm',
  saw_loss_mm: 'lost at each cut, mm',
  blind_how: 'how nobody is to know',
  copper_price_per_kg: 'copper, money per kg',
};

const settingWords = (setting: string) => SETTINGS[setting] ?? setting.replaceAll('_', ' ');

/** The name that people know a cable by, not the short one of its rows. */
function cableName(cell: (name: string) => string, trial: Trial): string {
  const own = [cell('maker'), cell('model')].filter((part) => part !== '').join(' ');
  return own || (trial.cables.find(({ cable }) => cable === cell('cable'))?.name ?? cell('cable'));
}

/** How far an exchange with a maker has come. */
function replyWords(cell: (name: string) => string): string {
  if (cell('received_on') !== '') return 'replied';
  if (cell('no_reply').toLowerCase() === 'yes') return 'no reply';
  return cell('deadline') === '' ? 'asked' : `asked, reply by ${cell('deadline')}`;
}

/** A reading as typed, by its name. */
export function readingWords(trial: Trial, reading: string): string {
  const found = trial.readings.find((each) => each.reading === reading);
  if (found === undefined) return 'a reading that is not on record';
  const { row, specimen, quantity } = found;
  return `${valueWords(row.value ?? '', row.unit ?? '')}, ${pieceWords(trial, specimen)}, ${quantityHead(quantity).toLowerCase()}`;
}
