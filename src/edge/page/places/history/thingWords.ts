import type { WithdrawnKind } from '../../../../journal/kinds/withdrawal.ts';
import { rowName } from '../../../../trial/rowName.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { pieceWords, signOfCable } from '../../store/bench/names.ts';
import { answerWords } from '../../store/bend/answerWords.ts';
import { outcomeWords } from '../../store/jacket/outcomeWords.ts';
import { checkWords } from '../../store/plan/checkWords.ts';

type Row = Readonly<Record<string, string>>;

/** What was put aside: `tool scale`, `KR, piece to take apart`. A cable's name is left out while names are hidden. */
export function thingWords(about: string, which: string, trial: Trial): string {
  const own = ROW_WORDS[about as WithdrawnKind]?.(trial, which) ?? null;
  if (own !== null) return own;
  if (about === 'specimen') return pieceWords(trial, which);
  const isHidden = about === 'trial' || (about === 'cable' && trial.blinding.blind);
  const name = about === 'cable' ? (trial.cables.find(({ cable }) => cable === which)?.name ?? which) : which;
  return [THINGS[about] ?? about, isHidden ? '' : name].join(' ').trim();
}

const THINGS: Readonly<Record<string, string>> = { trial: 'the trial', instrument: 'tool', evidence: 'look' };

/** Rows whose names say nothing to a person are told by what they say; null for one that is not on record. */
const ROW_WORDS: Partial<Record<WithdrawnKind, (trial: Trial, which: string) => string | null>> = {
  judgement: (trial, which) => {
    const standing = trial.judgements.find(({ judgement }) => judgement === which);
    const row = standing?.row ?? asideRow(trial, 'judgement', (each) => (each.judgement ?? '').trim() === which);
    if (row === null) return null;
    const { left = row.left ?? '', right = row.right ?? '' } = standing ?? {};
    return `the answer: ${answerWords(trial, { left, right }, row.result)}`;
  },
  endurance: (trial, which) => {
    const is = (row: Row) => rowName('endurance', row) === which;
    const standing = trial.endurance.find(({ row }) => is(row));
    const row = standing?.row ?? asideRow(trial, 'endurance', is);
    return row && `the outcome: ${outcomeWords(trial, standing?.specimen ?? row.specimen ?? '', row)}`;
  },
  evidence: (trial, which) => {
    const is = (row: Row) => rowName('evidence', row) === which;
    const row = trial.evidence.find((each) => is(each.row))?.row ?? asideRow(trial, 'evidence', is);
    return row && `the look at ${signOfCable(trial, row.cable ?? '')}: ${lookWords(row)}`;
  },
  check: (trial, which) => {
    const is = (row: Row) => (row.check ?? '').trim() === which;
    const row = trial.checks.find(({ check }) => check === which)?.row ?? asideRow(trial, 'check', is);
    return row && `the check of ${row.instrument ?? ''} that ${checkWords(row)}`;
  },
};

const lookWords = (row: Row) =>
  [(row.look ?? '').replaceAll('_', ' '), row.seen ?? ''].filter((part) => part !== '').join(', ');

const asideRow = (trial: Trial, kind: WithdrawnKind, is: (row: Row) => boolean): Row | null =>
  trial.aside.find((one) => one.kind === kind && is(one.row))?.row ?? null;
