import type { Entry } from '../journal/entry.ts';
import { cell, nameOrNull } from './cells.ts';
import type { Note, NoteSubject } from './trial.ts';

const SUBJECTS: readonly string[] = ['trial', 'cable', 'specimen', 'reading'];

/** A note out of its row; what is about nothing that this version knows is about the trial. */
export function makeNote(entry: Entry): Note {
  const row = entry.body;
  const typed = cell(row, 'about').toLowerCase();
  const about = SUBJECTS.includes(typed) ? (typed as NoteSubject) : 'trial';
  return {
    entry: entry.id,
    row,
    note: cell(row, 'note'),
    about,
    which: about === 'trial' ? entry.trial : cell(row, 'which'),
    text: cell(row, 'text'),
    photo: cell(row, 'photo'),
    shot: cell(row, 'shot').toLowerCase(),
    at: nameOrNull(row, 'at'),
    by: cell(row, 'by'),
    footage: cell(row, 'footage'),
    timecode: cell(row, 'timecode'),
  };
}
