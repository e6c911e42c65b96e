import { needed, type TableShape, text } from '../tableShape.ts';

/** What a note can be about. */
export const NOTE_SUBJECTS = ['trial', 'cable', 'specimen', 'reading'] as const;
/** What a photo of a piece or a cable shows. */
const OF_THE_CABLE = ['droop', 'cut face', 'label', 'print'] as const;
/** Photos that answer a doubt before it is raised. */
const AS_PROOF = ['receipt', 'scale display', 'meter display'] as const;

/** What a photo can show, by groups as a person looks for it. */
export const SHOTS = { cable: OF_THE_CABLE, proof: AS_PROOF, other: ['other'] as const } as const;
const ALL_SHOTS = [...SHOTS.cable, ...SHOTS.proof, ...SHOTS.other] as const;

/** Words or a photo about the trial, a cable, a piece or a reading. */
export const NOTE_TABLE: TableShape = {
  kind: 'note',
  file: 'notes.csv',
  key: ['note'],
  columns: [
    needed('note', 'Short name of the note'),
    text('about', 'What it is about; the trial when blank', { values: NOTE_SUBJECTS }),
    text('which', 'Name of the cable, piece or reading that it is about'),
    text('text', 'What it says'),
    text('photo', 'SHA-256 of the photo in hexadecimal, or the name of its file'),
    text('thumbnail', 'SHA-256 of a small version of the photo, which lists show instead'),
    text('shot', 'What the photo shows; a droop can be marked in it', { values: ALL_SHOTS }),
    text('answers', 'Question about the reading that it answers, by its code: asked, and kept as it is'),
    text('at', 'When', { moment: true }),
    text('by', 'Who wrote it'),
    text('footage', 'Recording in which it can be seen'),
    text('timecode', 'Where in that recording: 12:31 or 1:02:31', { timecode: true }),
  ],
};
