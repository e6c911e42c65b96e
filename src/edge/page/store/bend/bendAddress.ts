import { cableNamed, cableText } from '../cableAddress.ts';

/** What stands open in Bend, as the part of the address behind `#` has it. */
export type BendOpened =
  | { what: 'nothing' }
  /** The sheet of one cable. */
  | { what: 'cable'; cable: string }
  /** Judging pairs. */
  | { what: 'judge' }
  /** Marking the droop in a photo; the note that names it. */
  | { what: 'photo'; note: string };

const JUDGE = 'judge';
const PHOTO = 'photo:';

/** What the address names; a cable goes by its name alone. */
export function bendOpened(opened: string | null): BendOpened {
  if (opened === null || opened === '') return { what: 'nothing' };
  if (opened === JUDGE) return { what: 'judge' };
  if (opened.startsWith(PHOTO)) return { what: 'photo', note: opened.slice(PHOTO.length) };
  return { what: 'cable', cable: cableNamed(opened) };
}

/** The inverse of `bendOpened`. */
export function openedText(opened: BendOpened): string | null {
  if (opened.what === 'nothing') return null;
  if (opened.what === 'judge') return JUDGE;
  if (opened.what === 'photo') return `${PHOTO}${opened.note}`;
  return cableText(opened.cable, (text) => text === JUDGE || text.startsWith(PHOTO));
}
