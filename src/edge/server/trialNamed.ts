import type { Store } from '../store/store.ts';
import type { BenchContext } from './bench.ts';
import { refuse } from './refusal.ts';

/** The trial that a request names as `?trial=`, or the refusal when it names none, or none that is on the shelf. */
export async function trialNamed(c: BenchContext, store: Store): Promise<string | Response> {
  const trial = c.req.query('trial') ?? '';
  if (trial === '') return refuse(c, 400, { found: 'no trial', expected: '?trial=…', advice: 'Name the trial.' });
  if (await store.has(trial)) return trial;
  return refuse(c, 404, {
    found: `the trial "${trial.slice(0, 200)}"`,
    expected: 'a trial on the shelf',
    advice: '/api/trials lists them.',
  });
}
