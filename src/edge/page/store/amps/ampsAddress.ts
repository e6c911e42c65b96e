import { cableNamed, cableText } from '../cableAddress.ts';

/** What stands open in Amps, as the part of the address behind `#` has it. */
export type AmpsOpened =
  | { what: 'nothing' }
  /** The sheet of one cable. */
  | { what: 'cable'; cable: string }
  /** Looking at a run with every cable. */
  | { what: 'run' }
  /** Bringing a logger's file. */
  | { what: 'log' }
  /** The steps of a heating test. */
  | { what: 'heat' };

const ACTS = ['run', 'log', 'heat'] as const;

/** What the address names; a cable goes by its name alone. */
export function ampsOpened(opened: string | null): AmpsOpened {
  if (opened === null || opened === '') return { what: 'nothing' };
  const act = ACTS.find((name) => name === opened);
  if (act !== undefined) return { what: act };
  return { what: 'cable', cable: cableNamed(opened) };
}

/** The inverse of `ampsOpened`. */
export function ampsText(opened: AmpsOpened): string | null {
  if (opened.what === 'nothing') return null;
  if (opened.what !== 'cable') return opened.what;
  return cableText(opened.cable, (text) => ACTS.some((name) => name === text));
}
