import { rowName } from '../../../../trial/rowName.ts';
import { type RowOnRecord, RowsOnRecord } from '../../parts/rowsOnRecord.tsx';
import { outcomeWords } from '../../store/jacket/outcomeWords.ts';
import { folded } from '../../store/journal/journal.ts';
import { whenWords } from '../../store/whenWords.ts';

/** Why outcomes are usually put aside. */
const USUAL = ['miscounted', 'another piece', 'the load had slipped'];

/** What came of every piece that was tested, the latest first. */
export function OutcomesOnRecord({ trial: id }: { trial: string }) {
  const trial = folded.value;
  if (trial?.trial !== id) return null;
  const replaced = new Set(trial.endurance.map(({ row }) => (row.replaces ?? '').trim()).filter((name) => name !== ''));
  const rows = trial.endurance
    .map(({ entry, specimen, row }): RowOnRecord => {
      const overtaken = replaced.has((row.endurance ?? '').trim()) ? 'corrected by a later one' : '';
      return {
        entry,
        which: rowName('endurance', row),
        words: outcomeWords(trial, specimen, row),
        note: [row.by ?? '', whenWords(row.at ?? ''), overtaken].filter((part) => part.trim() !== '').join(', '),
      };
    })
    .reverse();
  return (
    <RowsOnRecord
      trial={trial}
      kind="endurance"
      summary={rows.length === 1 ? 'The one outcome, as it was kept' : `${rows.length} outcomes, as they were kept`}
      rows={rows}
      usual={USUAL}
      nameOf={(row) => outcomeWords(trial, row.specimen ?? '', row)}
    />
  );
}
