/** Puts things right without erasing anything: strike out, undo, pieces swapped, a wrong tag, the reveal. */
import { freshCodes } from '../../../../findings/plan/freshCodes.ts';
import { entries, folded, say } from '../journal/journal.ts';
import { putAside } from '../putAside.ts';
import { trouble } from './field.ts';
import { freshName } from './freshName.ts';
import { takeUp } from './inHand.ts';
import { quantityHead, signOf, valueWords } from './names.ts';
import { again } from './questions.ts';
import { announce } from './said.ts';
import { sayAnew } from './sayAnew.ts';
import { type Act, done, lastAct, told, undone } from './sitting.ts';

const readingNamed = (name: string) => folded.value?.readings.find(({ reading }) => reading === name);

/** Strikes a reading out. It stays on record with the reason and no longer counts. */
export async function strikeOut(reading: string, why: string): Promise<void> {
  const [was, trial] = [readingNamed(reading), folded.value];
  await strike(reading, why);
  if (was !== undefined && trial !== null) {
    const { specimen, quantity, row } = was;
    const shown = valueWords(row.value ?? '', row.unit ?? '');
    const words = `Struck out ${shown} · ${signOf(trial, specimen)}, ${quantityHead(quantity).toLowerCase()}`;
    done({ what: 'struck', kept: { reading, specimen, quantity, shown }, words });
  }
  announce('Struck out. It stays on record with its reason.');
}

async function strike(reading: string, why: string): Promise<void> {
  await say('strike', { reading, why, at: new Date().toISOString() });
  if (again.value?.reading === reading) again.value = null;
  trouble.value = '';
}

/**
 * Undoes what was done last on this device, step by step as often as it is asked: a reading is struck out with the reason
 * "undone" and its piece in hand again, what it had replaced or what was struck out is said anew, and swapped pieces go back.
 */
export async function undo(): Promise<void> {
  const act = lastAct.value;
  trouble.value = '';
  if (act === null) return announce('Nothing to undo: nothing was done here since the bench was opened.');
  const words = await takeBack(act);
  undone(words);
  announce(words);
}

async function takeBack(act: Act): Promise<string> {
  if (act.what === 'looked') {
    for (const which of act.looks) await putAside({ about: 'evidence', which }, 'undone');
    return `Undone: ${act.words}. It stays on record, put aside.`;
  }
  if (act.what === 'swapped') {
    await swapBack(act);
    return 'Undone: the two pieces have changed back.';
  }
  const { reading, shown } = act.kept;
  const now = readingNamed(reading);
  if (act.what === 'struck') {
    if (now !== undefined) await sayAnew(now, {}, 'not struck out after all');
    return `Undone: ${shown} counts again.`;
  }
  const earlier = act.replaced === '' ? undefined : readingNamed(act.replaced);
  if (now?.standing === 'counted') {
    if (earlier === undefined) await strike(reading, 'undone');
    else await sayAnew(earlier, {}, 'undone', reading);
  }
  takeUp(act.kept);
  return `Undone: ${shown}. It stays on record${earlier === undefined ? ', struck out' : ''}.`;
}

/** A mix-up of two pieces, as it is told. */
export interface MixUp {
  kind: 'swap' | 'tag';
  specimen: string;
  becomes: string;
  /** Name of the first reading that it concerns; empty: all of them. */
  fromReading: string;
  why: string;
}

/** Repairs a mix-up in one act; what was typed stays as typed. */
export async function repair({ kind, specimen, becomes, fromReading, why }: MixUp): Promise<void> {
  const from = readingNamed(fromReading)?.row.at ?? '';
  const until = await sayRetag({ kind, specimen, becomes, from, why });
  const trial = folded.value;
  const [one, other] = [specimen, becomes].map((piece) => (trial === null ? piece : signOf(trial, piece)));
  if (kind === 'swap') {
    const words = `${one} and ${other} have changed places`;
    done({ what: 'swapped', specimen, becomes, from, until, words });
  } else told.value = `What was read on ${one} belongs to ${other}`;
  announce(kind === 'swap' ? 'The two pieces have changed places.' : 'The tag is put right.');
}

/** What two pieces exchanged goes back by exchanging the same span once more. */
const swapBack = ({ specimen, becomes, from, until }: Act & { what: 'swapped' }) =>
  sayRetag({ kind: 'swap', specimen, becomes, from, until, why: 'undone' });

async function sayRetag(cells: Omit<MixUp, 'fromReading'> & { from: string; until?: string }): Promise<string> {
  const now = new Date().toISOString();
  const until = cells.until ?? now;
  await say('retag', { retag: freshName('m'), ...cells, until, at: now });
  trouble.value = '';
  return until;
}

/** Shows the names, for everybody and for good: the act is on record. */
export async function reveal(): Promise<void> {
  await say('blinding', { act: 'reveal', at: new Date().toISOString() });
  announce('The names are shown.');
}

const SEED_BYTES = 16;

/**
 * Goes by codes alone from here on. New codes are drawn after the names are hidden, so that they never stand beside one.
 *
 * @param newCodes whether the pieces get other codes than they had
 */
export async function goBlind(how: string, newCodes = false): Promise<void> {
  await say('blinding', { act: 'blind', how, at: new Date().toISOString() });
  const trial = folded.value;
  if (!newCodes || trial === null) return announce('From here on only codes are shown.');
  const seed = [...crypto.getRandomValues(new Uint8Array(SEED_BYTES))].map((byte) => byte.toString(16)).join('');
  for (const row of freshCodes(trial, entries.value, seed)) await say('specimen', row);
  announce('From here on only codes are shown, and they are new: labels printed so far are void.');
}

/** By quantity across the pieces, or piece by piece. */
export async function workBy(working: 'by quantity' | 'by specimen'): Promise<void> {
  await say('setting', { setting: 'working', value: working });
}
