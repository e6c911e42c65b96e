/** Notes and photos, about whatever they are about. */
import { folded, say } from '../journal/journal.ts';
import { keepPhoto } from '../journal/photos.ts';
import { inFootage } from './filming.ts';
import { freshName } from './freshName.ts';
import { announce } from './said.ts';

/** What a note is about. */
export interface About {
  about: 'trial' | 'cable' | 'specimen' | 'reading';
  which: string;
}

async function keepNote(subject: About, cells: Record<string, string>): Promise<void> {
  const now = new Date();
  const row = { note: freshName('n'), about: subject.about, which: subject.which, ...cells };
  await say('note', { ...row, at: now.toISOString(), ...inFootage(now.getTime()) });
}

export async function writeNote(subject: About, text: string): Promise<void> {
  await keepNote(subject, { text });
  announce('Kept: the note.');
}

/** Keeps a photo and the note that names it. `shot` says what it shows; empty when nothing. */
export async function addPhoto(subject: About, file: File, shot: string, text = ''): Promise<void> {
  const trial = folded.value?.trial;
  if (trial === undefined) throw new Error('No trial is open.');
  await keepNote(subject, { ...(await keepPhoto(trial, file)), shot, text });
  announce(shot === 'droop' ? 'Kept: the photo. The droop in it is marked on Bend.' : 'Kept: the photo.');
}
