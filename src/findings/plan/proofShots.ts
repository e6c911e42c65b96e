import type { Trial } from '../../trial/trial.ts';
import { photosOfCable } from './photosOfCable.ts';

/** Photos that a dispute asks for, with when to take each. */
export const WANTED_SHOTS = [
  { shot: 'receipt', when: 'before anything is opened' },
  { shot: 'print', when: 'the print on the jacket, before the first cut' },
  { shot: 'cut face', when: 'a cut face beside a ruler, after cutting' },
  { shot: 'scale display', when: 'the scale with the conductor on it, while weighing' },
  { shot: 'meter display', when: 'the meter and its clips, while reading ohms' },
] as const;

export interface ProofShot {
  shot: string;
  when: string;
  /** Names of the notes that hold it; empty: not there yet. */
  notes: string[];
}

/** The proof shots of one cable and which are there: a note about the cable, a piece of it or a reading on it counts. */
export function proofShotsOf(trial: Pick<Trial, 'notes' | 'specimens' | 'readings'>, cable: string): ProofShot[] {
  const own = photosOfCable(trial, cable);
  return WANTED_SHOTS.map(({ shot, when }) => ({
    shot,
    when,
    notes: own.filter((n) => n.shot === shot).map((n) => n.note),
  }));
}
