import { relativeDifference } from './firstDifference.ts';

/**
 * How many numbers and words of two JSON values differ, place by place; what only one side has counts once. Numbers within
 * `tolerance` of each other, relative, count as the same, as where the first difference is looked for.
 */
export function countDifferences(published: unknown, computed: unknown, tolerance: number): number {
  if (Object.is(published, computed)) return 0;
  if (typeof published === 'number' && typeof computed === 'number')
    return relativeDifference(published, computed) <= tolerance ? 0 : 1;
  if (!isTree(published) || !isTree(computed)) return 1;
  const keys = new Set([...Object.keys(published), ...Object.keys(computed)]);
  return [...keys].reduce((count, key) => count + countDifferences(published[key], computed[key], tolerance), 0);
}

const isTree = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
