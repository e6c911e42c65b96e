import { v7 as newId } from 'uuid';
import { starterEntries } from '../../../findings/starter.ts';
import type { Entry } from '../../../journal/entry.ts';
import type { Jobs } from './jobs.ts';

/**
 * The answers about a first trial to its entries. Pieces are left out: the plan proposes them, and they go on record when
 * somebody accepts the cut list, because what is wanted mostly changes before that.
 */
export function startJob({ answers, ...saying }: Jobs['start']['ask']): Entry[] {
  return starterEntries(answers, { ...saying, newId }).filter(({ kind }) => kind !== 'specimen');
}
