/** The six things that answer for one cable, each as somebody types it; blank where it is not known. */
export interface SixFields {
  /** What the label says, size and metal: `2 AWG OFC`. */
  label: string;
  /** Mass of the bare conductor that was weighed. */
  mass: string;
  /** Length of the piece that was weighed. */
  length: string;
  /** Resistance read with four wires. */
  ohms: string;
  /** Length between the voltage contacts. */
  contacts: string;
  /** The copper's temperature. */
  temperature: string;
}

export const BLANK: SixFields = { label: '', mass: '', length: '', ohms: '', contacts: '', temperature: '' };
