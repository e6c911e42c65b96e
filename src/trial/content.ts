import { canonicalRow } from '../journal/importedId.ts';
import { textHash } from '../journal/textHash.ts';
import { withAside } from './setAside.ts';
import type { AsideKind, Trial, TypedRow } from './trial.ts';

const canonicalRows = (rows: readonly TypedRow[]): string[] =>
  rows.map(({ row }) => JSON.stringify(canonicalRow(row))).sort();

/** Tables that say something. Those that came later are left out when empty, so that older trials keep their content. */
const filled = (tables: Readonly<Record<string, readonly TypedRow[]>>): Record<string, string[]> =>
  Object.fromEntries(
    Object.entries(tables)
      .filter(([, rows]) => rows.length > 0)
      .map(([name, rows]) => [name, canonicalRows(rows)]),
  );

/**
 * What a trial says, as one canonical text: every row as typed, columns and rows sorted, blanks and blank cells left out.
 * Who wrote it on which device, entry ids and order are no part of it, so export and import keep it. Rows that cannot be
 * read are no part of the trial and not of this; nor are seals and replies, which speak of the publishing and not of the cables,
 * so that sealing a part moves no digit.
 */
export function trialContent(trial: Trial): string {
  const described = trial.described?.row ?? {};
  const all = (kind: AsideKind, standing: readonly TypedRow[]) => canonicalRows(withAside(trial, kind, standing));
  return JSON.stringify({
    trial: JSON.stringify(canonicalRow({ ...described, trial: trial.trial })),
    cables: all('cable', trial.cables),
    fittings: all('fitting', trial.fittings),
    instruments: all('instrument', trial.instruments),
    specimens: all('specimen', trial.specimens),
    evidence: all('evidence', trial.evidence),
    readings: canonicalRows(trial.readings),
    strikes: canonicalRows(trial.strikes),
    judgements: all('judgement', trial.judgements),
    endurance: all('endurance', trial.endurance),
    currents: all('current', trial.currents),
    ...filled({
      checks: withAside(trial, 'check', trial.checks),
      withdrawals: trial.withdrawals,
      retags: trial.retags,
      notes: trial.notes,
      settings: trial.settingRows,
      blinding: trial.blinding.acts,
    }),
  });
}

/** SHA-256 of the content, 64 hex digits: the seed of every random draw comes from it, so the same content gives the same digits. */
export function contentHash(trial: Trial): string {
  return textHash(trialContent(trial));
}
