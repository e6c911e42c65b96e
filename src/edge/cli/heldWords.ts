import type { Seal } from '../store/backup/seal.ts';

/** What a backup holds: `3 trials with 1204 entries and 12 photos or logs`. */
export function heldWords({ trials, entries, blobs }: Pick<Seal, 'trials' | 'entries' | 'blobs'>): string {
  const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;
  const words = `${count(trials, 'trial', 'trials')} with ${count(entries, 'entry', 'entries')}`;
  return blobs === 0 ? words : `${words} and ${count(blobs, 'photo or log', 'photos or logs')}`;
}
