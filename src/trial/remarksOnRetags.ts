import { cell } from './cells.ts';
import { pieceSign } from './plainWords.ts';
import type { Reading, Remark, Retag, Trial } from './trial.ts';

const between = (trial: Trial, { kind, specimen, becomes }: Retag): string =>
  kind === 'swap'
    ? `the swap of ${pieceSign(trial, specimen)} and ${pieceSign(trial, becomes)}`
    : `the changed tag of ${pieceSign(trial, specimen)}`;

function concerns(retag: Retag, reading: Reading): boolean {
  const typed = cell(reading.row, 'specimen');
  return typed === retag.specimen || (retag.kind === 'swap' && typed === retag.becomes);
}

const bounded = ({ row }: Retag): boolean => ['from', 'until', 'at'].some((name) => cell(row, name) !== '');

/** Repairs that nothing was read under, and repairs of a span of time where some readings carry none. */
export function remarksOnRetags(trial: Trial): Remark[] {
  return trial.retags.flatMap((retag) => {
    const concerned = trial.readings.filter((reading) => reading.standing !== 'struck' && concerns(retag, reading));
    const rows = [...trial.readings, ...trial.judgements, ...trial.endurance, ...trial.currents];
    const remarks: Remark[] = [];
    if (!rows.some(({ retagged }) => retagged.includes(retag.retag))) {
      const text = `A repair (${between(trial, retag)}) changes nothing: nothing was read on them in its span.`;
      remarks.push({ code: 'retag-without-effect', cable: null, readings: [], text });
    }
    const untimed = concerned.filter((reading) => cell(reading.row, 'at') === '');
    if (bounded(retag) && untimed.length > 0) {
      const text = `Whether ${between(trial, retag)} holds for readings without a time is taken from the trial's first day: look at them.`;
      remarks.push({ code: 'retag-of-untimed', cable: null, readings: untimed.map(({ reading }) => reading), text });
    }
    return remarks;
  });
}
