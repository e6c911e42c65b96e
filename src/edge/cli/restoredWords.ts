import type { Restored } from '../store/backup/restored.ts';
import { numberRanges } from '../store/numberRanges.ts';
import type { Salvaged } from '../store/sqlite/salvage.ts';
import { counted, heldWords } from './heldWords.ts';

/** What came of a restore: a line each on the shelf, on what came over, on what is lost, and on where the rest is. */
export function restoredWords({ backup, held, sealed, salvaged, aside }: Restored): string {
  const lines: string[] = [];
  const added = (salvaged?.entries ?? 0) + (salvaged?.blobs ?? 0);
  if (backup !== null) {
    const compared = sealed ? ', as they were backed up' : '; the file has no seal, so only its structure was checked';
    lines.push(`The ${added === 0 ? 'shelf' : 'backup'} holds ${heldWords(backup)}${compared}.`);
  }
  if (salvaged !== null) lines.push(...salvagedLines(salvaged, backup !== null));
  if (added > 0) lines.push(`The shelf holds ${heldWords(held)}.`);
  if (aside !== null) lines.push(`What was there before is kept in ${aside}.`);
  return lines.map((line) => `${line}\n`).join('');
}

function salvagedLines({ entries, blobs, lost, lostBlobs, unreadable }: Salvaged, besideBackup: boolean): string[] {
  const lines: string[] = [];
  if (entries + blobs > 0) {
    const words = [
      ...(entries === 0 ? [] : [counted(entries, 'entry', 'entries')]),
      ...(blobs === 0 ? [] : [counted(blobs, 'photo or log', 'photos or logs')]),
    ].join(' and ');
    lines.push(
      besideBackup
        ? `Added from the shelf that was there: ${words} that the backup did not hold.`
        : `Read from the shelf that was there: ${words}.`,
    );
  }
  if (unreadable !== null) lines.push(`Not all of the shelf that was there could be read (${unreadable}).`);
  for (const { trial, numbers } of lost) {
    const which = `${numbers.length === 1 ? 'entry' : 'entries'} ${numberRanges(numbers)}`;
    const again =
      numbers.length === 1 ? 'A device that still holds it sends it' : 'Devices that still hold them send them';
    lines.push(`Beyond reading in trial "${trial}": ${which}. ${again} again.`);
  }
  if (lostBlobs > 0) lines.push(`Beyond reading: ${counted(lostBlobs, 'photo or log', 'photos or logs')}.`);
  return lines;
}
