import { cableNamed, cableText } from '../cableAddress.ts';

/** What stands open in Jacket, as the part of the address behind `#` has it. */
export type JacketOpened =
  | { what: 'nothing' }
  /** The sheet of one cable. */
  | { what: 'cable'; cable: string }
  /** Running an endurance test. */
  | { what: 'run' };

const RUN = 'run';

/** What the address names; a cable goes by its name alone. */
export function jacketOpened(opened: string | null): JacketOpened {
  if (opened === null || opened === '') return { what: 'nothing' };
  if (opened === RUN) return { what: 'run' };
  return { what: 'cable', cable: cableNamed(opened) };
}

/** The inverse of `jacketOpened`. */
export function openedText(opened: JacketOpened): string | null {
  if (opened.what === 'nothing') return null;
  if (opened.what === 'run') return RUN;
  return cableText(opened.cable, (text) => text === RUN);
}
