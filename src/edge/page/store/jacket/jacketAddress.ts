/** What stands open in Jacket, as the part of the address behind `#` has it. */
export type JacketOpened =
  | { what: 'nothing' }
  /** The sheet of one cable. */
  | { what: 'cable'; cable: string }
  /** Running an endurance test. */
  | { what: 'run' };

const RUN = 'run';
/** Set before a cable whose name would be taken for something else. */
const CABLE = 'cable:';

/** What the address names; a cable goes by its name alone. */
export function jacketOpened(opened: string | null): JacketOpened {
  if (opened === null || opened === '') return { what: 'nothing' };
  if (opened === RUN) return { what: 'run' };
  return { what: 'cable', cable: opened.startsWith(CABLE) ? opened.slice(CABLE.length) : opened };
}

/** The inverse of `jacketOpened`. */
export function openedText(opened: JacketOpened): string | null {
  if (opened.what === 'nothing') return null;
  if (opened.what === 'run') return RUN;
  const { cable } = opened;
  return cable === RUN || cable.startsWith(CABLE) ? `${CABLE}${cable}` : cable;
}
