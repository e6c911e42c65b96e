import type { Salvaged } from '../sqlite/salvage.ts';
import type { Seal } from './seal.ts';

/** What came of putting a backup back. */
export interface Restored {
  /** What is in the backup; null when there was none, and the shelf was made of what could still be read. */
  backup: Seal | null;
  /** What the shelf holds now. */
  held: Seal;
  /** The backup was compared, to the letter, with what had been backed up. */
  sealed: boolean;
  /** What came over from the shelf that was there; null when there was none, or it was not asked for. */
  salvaged: Salvaged | null;
  /** Where what was there before is now; null when there was nothing. */
  aside: string | null;
}

/** A moment as it stands in a name: 2026-11-25-101530, in UTC. */
export function asideStamp(now: Date): string {
  return now.toISOString().slice(0, 19).replace('T', '-').replaceAll(':', '');
}
