import type { Entry } from '../../../../journal/entry.ts';
import type { PartPlace } from '../../../../journal/kinds/seal.ts';
import type { SealedPart } from '../../../../trial/trial.ts';
import { Bench } from '../../worker/bench.ts';
import { recorder } from '../journal/device.ts';
import { say } from '../journal/journal.ts';

export interface SealForm {
  part: string;
  title: string;
  places: readonly PartPlace[];
  hidden: boolean;
}

const LEVEL = 0.95;

/**
 * Seals a part: computes what it holds and says its row.
 *
 * @returns null when it was sealed, or a sentence that says what stands in the way
 */
export async function sealPart(
  entries: readonly Entry[],
  known: readonly SealedPart[],
  { part, ...form }: SealForm,
): Promise<string | null> {
  const name = part.trim();
  if (name === '') return 'Found no name for the part; expected one such as 2.';
  if (known.some((each) => each.part === name))
    return `Part ${name} is sealed already; seal what is new as another part.`;
  const bench = new Bench();
  try {
    const at = new Date().toISOString();
    const asked = { ...form, part: name, title: form.title.trim(), level: LEVEL, draws: 0, at, by: recorder.value };
    await say('seal', await bench.ask('seal', { entries, asked }));
    return null;
  } catch (error) {
    return `It was not sealed: ${error instanceof Error ? error.message : String(error)}.`.replace(/\.+$/, '.');
  } finally {
    bench.stop();
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
