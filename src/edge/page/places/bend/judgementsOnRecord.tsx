import { type RowOnRecord, RowsOnRecord } from '../../parts/rowsOnRecord.tsx';
import { answerWords } from '../../store/bend/answerWords.ts';
import { folded } from '../../store/journal/journal.ts';
import { whenWords } from '../../store/whenWords.ts';

/** Why answers are usually put aside. */
const USUAL = ['the other hand was meant', 'the judge saw the print', 'for trying out'];

/** Every answer of every judge, the latest first. */
export function JudgementsOnRecord({ trial: id }: { trial: string }) {
  const trial = folded.value;
  if (trial?.trial !== id) return null;
  const rows = trial.judgements
    .map(
      ({ entry, judgement, left, right, row }): RowOnRecord => ({
        entry,
        which: judgement,
        words: answerWords(trial, { left, right }, row.result),
        note: [row.by ?? '', whenWords(row.at ?? '')].filter((part) => part.trim() !== '').join(', '),
      }),
    )
    .reverse();
  return (
    <RowsOnRecord
      trial={trial}
      kind="judgement"
      summary={rows.length === 1 ? 'The one answer, as it was given' : `${rows.length} answers, as they were given`}
      rows={rows}
      usual={USUAL}
      nameOf={({ left = '', right = '', result }) => answerWords(trial, { left, right }, result)}
    />
  );
}
