/** Judgements, and rows about one piece, with the pieces as typed. */
import type { Entry } from '../journal/entry.ts';
import { cell } from './cells.ts';
import { NOT_RETAGGED } from './repoint.ts';
import type { Judgement, OnPiece } from './trial.ts';

export function makeJudgement(entry: Entry): Judgement {
  const row = entry.body;
  return {
    entry: entry.id,
    row,
    judgement: cell(row, 'judgement'),
    left: cell(row, 'left'),
    right: cell(row, 'right'),
    retagged: NOT_RETAGGED,
  };
}

export function makeOnPiece(entry: Entry): OnPiece {
  const row = entry.body;
  return { entry: entry.id, row, specimen: cell(row, 'specimen'), retagged: NOT_RETAGGED };
}
