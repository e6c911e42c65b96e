/** What Amps draws beyond the findings: curves, points and candidates, worked out beside the page. */
import { signal } from '@preact/signals';
import { Bench } from '../../worker/bench.ts';
import type { Jobs } from '../../worker/jobs.ts';
import type { Assay } from '../assay.ts';
import { sentenceOf } from '../sentenceOf.ts';

export interface AmpsData {
  trial: string;
  /** null while it is worked out. */
  answer: Jobs['amps']['answer'] | null;
  /** What stood in the way; empty when nothing. */
  sentence: string;
}

export const ampsData = signal<AmpsData | null>(null);

const bench = new Bench();
/** Entries and findings that were worked out last. */
let asked: { entries: Assay['entries']; trial: string } | null = null;

/** Works out anew when the entries changed; the random draws change nothing in it. */
export async function followAmps({ trial, entries, findings }: Assay): Promise<void> {
  if (findings === null || (asked?.entries === entries && asked.trial === trial)) return;
  const now = { entries, trial };
  asked = now;
  if (ampsData.peek()?.trial !== trial) ampsData.value = { trial, answer: null, sentence: '' };
  try {
    const answer = await bench.ask('amps', { entries, findings });
    if (asked === now) ampsData.value = { trial, answer, sentence: '' };
  } catch (error) {
    if (asked !== now) return;
    asked = null;
    ampsData.value = { trial, answer: null, sentence: sentenceOf(error) };
  }
}
