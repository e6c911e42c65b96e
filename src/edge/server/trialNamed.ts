import type { Store } from '../store/store.ts';
import type { BenchContext } from './bench.ts';
import type { JournalBook } from './journalBook.ts';
import { refuse } from './refusal.ts';

/**
 * The trial that a request names as `?trial=`, or the refusal when it names none, or none that is on the shelf. A reader is told the
 * same of a trial of which nothing is sealed as of one that is not there.
 */
export async function trialNamed(c: BenchContext, store: Store, journals: JournalBook): Promise<string | Response> {
  const trial = c.req.query('trial') ?? '';
  if (trial === '') return refuse(c, 400, { found: 'no trial', expected: '?trial=…', advice: 'Name the trial.' });
  const there = await store.has(trial);
  const asker = c.get('asker');
  const found = `the trial "${trial.slice(0, 200)}"`;
  if (asker.role !== 'reader')
    return there
      ? trial
      : refuse(c, 404, { found, expected: 'a trial on the shelf', advice: '/api/trials lists them.' });
  if (there && (await journals.seenBy(asker, trial)).entries.length > 0) return trial;
  return refuse(c, 404, {
    found,
    expected: 'a trial of which a part was sealed',
    advice: 'It shows here as soon as the tester seals a part for readers.',
  });
}
