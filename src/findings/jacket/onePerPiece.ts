import { group } from 'd3-array';
import type { Warning } from '../schema.ts';
import type { EnduranceRow } from './readEndurance.ts';
import { plainAmount } from './words.ts';

/**
 * One row for each piece of a test, in the order in which they were said. A piece fails once: what says otherwise is settled by the
 * rules below, each with its sentence.
 */
export function onePerPiece(rows: readonly EnduranceRow[], warnings: Warning[]): EnduranceRow[] {
  return [...group(rows, (r) => r.specimen).values()].flatMap((of) => settled(of, warnings) ?? []);
}

function settled(rows: readonly EnduranceRow[], warnings: Warning[]): EnduranceRow | null {
  const [{ specimen, cable, test, unit }] = rows;
  const amount = (x: number) => plainAmount(x, unit);
  const say = (code: string, text: string) => warnings.push({ code, cable, text });
  const failed = rows.filter((r) => r.failed);
  const survived = rows.filter((r) => !r.failed);
  const farthest = Math.max(...survived.map((r) => r.amount));
  const [failure] = failed;
  if (failed.length > 1)
    say(
      'endurance-failed-twice',
      `${specimen} failed twice in the ${test} test, at ${failed.map((r) => amount(r.amount)).join(' and at ')}. A piece fails once: the first is counted. If the earlier one was a slip, say so where the test is run (“The earlier one was a slip”); if it was another piece, take the later one back and keep it on that piece.`,
    );
  if (!failure) return survived.reduce((far, r) => (r.amount > far.amount ? r : far));
  if (survived.length === 0) return failure;
  if (failure.amount < farthest) {
    say(
      'endurance-contradicts',
      `${specimen} is said to have survived ${amount(farthest)} of the ${test} test and to have failed at ${amount(failure.amount)}: both cannot be. Put one right; it is left out till then.`,
    );
    return null;
  }
  say(
    'endurance-survivor-failed-later',
    `${specimen} survived ${amount(farthest)} of the ${test} test and was later reported failed at ${amount(failure.amount)}: counted as one test that went on, failed at ${amount(failure.amount)}.`,
  );
  return failure;
}
