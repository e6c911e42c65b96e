import { group } from 'd3-array';
import { listed } from '../flex/words.ts';
import type { TestRead } from './readEndurance.ts';

/** Hours, as far as a test is one of exposure. */
const isExposure = ({ kind, unit }: TestRead) =>
  kind === 'passed' && /^(?:h|hrs?|hours?|d|days?|min|minutes?)$/i.test(unit);

/** Pieces that were through another of the tests before this one, by that test. */
export function usedBefore(test: TestRead, all: readonly TestRead[]): { test: string; pieces: string[] }[] {
  const used = test.rows.flatMap((row) =>
    all
      .filter((other) => other !== test)
      .filter((other) => other.rows.some((r) => r.specimen === row.specimen && r.place < row.place))
      .map((other) => ({ piece: row.specimen, before: other.test })),
  );
  return [...group(used, (u) => u.before)].map(([before, of]) => ({
    test: before,
    pieces: [...new Set(of.map((u) => u.piece))],
  }));
}

/** What has to be read beside a result: pieces whose jacket was used before, and how the hours of an exposure are known. */
export function testNotes(test: TestRead, all: readonly TestRead[]): string[] {
  const used = usedBefore(test, all).map(({ test: before, pieces }) => usedText(pieces, before, test.rows.length));
  return [...used, ...hoursKnown(test)];
}

/** That pieces were used before, and what that means for the comparison. */
export function usedText(pieces: readonly string[], before: string, all: number): string {
  if (pieces.length === all)
    return `Every piece had been through the ${before} test before: used jackets may fail sooner than fresh ones, and most where that test bit deepest, so the order leans on both tests.`;
  return `${listed(pieces)} had been through the ${before} test before: a used jacket may fail sooner, so ${pieces.length === 1 ? 'that piece does' : 'those pieces do'} not compare with fresh ones.`;
}

function hoursKnown(test: TestRead): string[] {
  if (!isExposure(test)) return [];
  const { rows } = test;
  const by = (how: string) => rows.filter((r) => r.amountBy === how).length;
  const [clocked, planned] = [by('clock'), by('planned')];
  if (clocked === rows.length) return ['The hours were clocked.'];
  if (planned === rows.length) return ['The hours are as planned; the clock of the test did not run that long.'];
  const parts = [
    [clocked, 'clocked'],
    [planned, 'as planned'],
    [rows.length - clocked - planned, 'as written down, without a word on how they are known'],
  ] as const;
  const said = parts
    .filter(([n]) => n > 0)
    .map(([n, how]) => (n === rows.length ? how : `${n} of ${rows.length} ${how}`));
  return [`The hours are ${listed(said)}.`];
}
