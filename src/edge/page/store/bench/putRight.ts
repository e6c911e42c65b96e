/** Puts things right without erasing anything: strike out, undo, pieces swapped, a wrong tag, the reveal. */
import { folded, say } from '../journal/journal.ts';
import { takeUp } from './inHand.ts';
import { again, asked, freshName, lastKept } from './record.ts';
import { announce } from './said.ts';

/** Strikes a reading out. It stays on record with the reason and no longer counts. */
export async function strikeOut(reading: string, why: string): Promise<void> {
  await say('strike', { reading, why, at: new Date().toISOString() });
  if (asked.value?.about.reading === reading) asked.value = null;
  if (again.value?.reading === reading) again.value = null;
  if (lastKept.value?.reading === reading) lastKept.value = null;
  announce('Struck out. It stays on record with its reason.');
}

/** Undoes the last reading recorded here: struck out with the reason "undone", and its piece in hand again. */
export async function undo(): Promise<void> {
  const last = lastKept.value;
  if (last === null) return announce('Nothing to undo: nothing was recorded here since.');
  await strikeOut(last.reading, 'undone');
  takeUp(last);
  announce(`Undone: ${last.shown}. It stays on record, struck out.`);
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
  const first = folded.value?.readings.find((reading) => reading.reading === fromReading);
  const now = new Date().toISOString();
  await say('retag', {
    retag: freshName('m'),
    kind,
    specimen,
    becomes,
    from: first?.row.at ?? '',
    until: now,
    why,
    at: now,
  });
  announce(kind === 'swap' ? 'The two pieces have changed places.' : 'The tag is put right.');
}

/** Shows the names, for everybody and for good: the act is on record. */
export async function reveal(): Promise<void> {
  await say('blinding', { act: 'reveal', at: new Date().toISOString() });
  announce('The names are shown.');
}

/** Goes by codes alone from here on. */
export async function goBlind(how: string): Promise<void> {
  await say('blinding', { act: 'blind', how, at: new Date().toISOString() });
  announce('From here on only codes are shown.');
}

/** By quantity across the pieces, or piece by piece. */
export async function workBy(working: 'by quantity' | 'by specimen'): Promise<void> {
  await say('setting', { setting: 'working', value: working });
}
