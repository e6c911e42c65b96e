import { describe, expect, it } from 'vitest';
import { isOpenToReaders, readerSees } from '../../../src/edge/page/store/readerSees.ts';
import { routeOf } from '../../../src/edge/page/store/routeOf.ts';
import type { PartPlace } from '../../../src/journal/kinds/seal.ts';

describe('what a device that only reads gets at an address', () => {
  const PUBLISHED: readonly PartPlace[] = ['inside', 'bend'];
  it.each([
    ['/', '', 'place'],
    ['/cables', '', 'place'],
    ['/trial/t/publish', '', 'place'],
    ['/trial/t/history', '', 'place'],
    ['/trial/t/inside', '', 'place'],
    ['/trial/t', '#quill', 'place'],
    ['/trial/t/bend', '#quill', 'place'],
    ['/trial/t/standing', '', 'unpublished'],
    ['/trial/t/jacket', '', 'unpublished'],
    ['/trial/t/amps', '#run', 'unpublished'],
    ['/trial/t/plan', '', 'plan'],
    ['/trial/t/plan', '#labels', 'plan'],
    ['/trial/t/bench', '', 'records'],
    ['/trial/t/bench', '#slate', 'records'],
    ['/trial/t/bend', '#judge', 'records'],
    ['/trial/t/bend', '#photo:n1', 'records'],
    ['/trial/t/jacket', '#run', 'records'],
    ['/trial/t/amps', '#log', 'records'],
    ['/trial/t/amps', '#heat', 'records'],
  ])('%s%s: %s', (path, hash, sees) => {
    expect(readerSees(routeOf(path, hash), PUBLISHED)).toBe(sees);
  });

  it('is open without a look at the journal where nothing of the trial is worked out', () => {
    const open = ['/', '/phones', '/trial/t/publish', '/trial/t/history'];
    const notYet = ['/trial/t', '/trial/t/standing', '/trial/t/plan', '/trial/t/bench'];
    expect(open.filter((path) => !isOpenToReaders(routeOf(path, '')))).toEqual([]);
    expect(notYet.filter((path) => isOpenToReaders(routeOf(path, '')))).toEqual([]);
  });
});
