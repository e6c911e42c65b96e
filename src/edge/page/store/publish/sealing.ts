import type { PartPlace } from '../../../../journal/kinds/seal.ts';
import type { SealedPart } from '../../../../trial/trial.ts';
import { ask } from '../api.ts';
import { recorder } from '../journal/device.ts';
import { say } from '../journal/journal.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { untilSent } from './untilSent.ts';

export interface SealForm {
  part: string;
  title: string;
  places: readonly PartPlace[];
  hidden: boolean;
}

/**
 * Seals a part: the bench computer computes what it holds, by the same program that checks it later, and this page says its row.
 *
 * @returns null when it was sealed, or a sentence that says what stands in the way
 */
export async function sealPart(trial: string, { part, title, places, hidden }: SealForm): Promise<string | null> {
  const unsent = await untilSent();
  if (unsent !== '') return unsent;
  const asked = { trial, part: part.trim(), title: title.trim(), places: places.join(','), by: recorder.peek() };
  const query = new URLSearchParams({ ...asked, hidden: hidden ? 'yes' : 'no' });
  const row = await ask<Record<string, string>>(`/api/seal?${query}`);
  if (!row.ok) return row.sentence;
  try {
    await say('seal', row.value);
    return null;
  } catch (error) {
    return sentenceOf(error);
  }
}

/** Hides a sealed part from readers, or shows it to them: another row of its name; the seal itself stays as it is. */
export async function hideFromReaders({ row }: SealedPart, hidden: boolean): Promise<void> {
  await say('seal', { ...row, hidden: hidden ? 'yes' : 'no' });
}

/** A name for the next part: the number after those that are there. */
export function nextPartName(known: readonly SealedPart[]): string {
  for (let number = known.length + 1; ; number += 1)
    if (known.every(({ part }) => part !== String(number))) return String(number);
}
