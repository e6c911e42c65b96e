import type { Trial } from '../../../../trial/trial.ts';
import { typedText, unitText } from '../../../../units/typedText.ts';
import { pieceWords } from '../bench/names.ts';

type Row = Readonly<Record<string, string>>;

/** `KR, piece to abuse 2: scrape, 7 N, failed at 120 strokes`. */
export function outcomeWords(trial: Trial, specimen: string, row: Row): string {
  const cell = (name: string) => (row[name] ?? '').trim();
  const load = cell('stress') === '' ? '' : typedText(cell('stress'), cell('stress_unit'));
  const unit = unitText(cell('unit')) || cell('unit');
  const how = cell('outcome').toLowerCase() === 'failed' ? 'failed at' : 'survived';
  const came = `${how} ${cell('amount')} ${unit}`.trim();
  return `${pieceWords(trial, specimen)}: ${[cell('test'), load, came].filter((part) => part !== '').join(', ')}`;
}
