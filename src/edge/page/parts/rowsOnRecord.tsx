import '../styles/onRecord.css';
import type { Trial } from '../../../trial/trial.ts';
import { AsideList } from './asideList.tsx';
import { PutAside } from './putAside.tsx';

interface RowsOnRecordProps {
  trial: Trial;
  kind: 'judgement' | 'endurance';
  /** `12 answers on record` */
  summary: string;
  rows: readonly RowOnRecord[];
  /** Why such rows are usually put aside. */
  usual: readonly string[];
  /** What a row that stands aside is called. */
  nameOf: (row: Readonly<Record<string, string>>) => string;
}

export interface RowOnRecord {
  entry: string;
  /** Name to put it aside by. */
  which: string;
  words: string;
  /** Who said it, when, and what else is to be known of it. */
  note: string;
}

/** Rows as they were said, folded, each with the way to put it aside, and those that stand aside with the way back. */
export function RowsOnRecord({ trial, kind, summary, rows, usual, nameOf }: RowsOnRecordProps) {
  return (
    <div class="rows-on-record">
      {rows.length > 0 && (
        <details>
          <summary>{summary}</summary>
          <ul>
            {rows.map(({ entry, which, words, note }) => (
              <li key={entry}>
                <span>
                  <bdi dir="auto">{words}</bdi>{' '}
                  <span class="note">
                    <bdi dir="auto">{note}</bdi>
                  </span>
                </span>
                <PutAside about={kind} which={which} name={words} usual={usual} />
              </li>
            ))}
          </ul>
        </details>
      )}
      <AsideList trial={trial} kind={kind} nameOf={nameOf} />
    </div>
  );
}
