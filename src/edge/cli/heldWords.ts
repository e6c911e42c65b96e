import type { Seal } from '../store/backup/seal.ts';

/** `1 entry`, `12 entries`. */
export function counted(n: number, one: string, many: string): string {
  return `${n} ${n === 1 ? one : many}`;
}

/** What a backup holds: `3 trials with 1204 entries and 12 photos or logs`. */
export function heldWords({ trials, entries, blobs }: Pick<Seal, 'trials' | 'entries' | 'blobs'>): string {
  const words = `${counted(trials, 'trial', 'trials')} with ${counted(entries, 'entry', 'entries')}`;
  return blobs === 0 ? words : `${words} and ${counted(blobs, 'photo or log', 'photos or logs')}`;
}
