/** Figures of a set-up with a unit typed behind them, in the unit that the test is kept in. Pure. */
import { readTypedQuantity } from '../../../../units/typedQuantity.ts';
import { splitTyped } from '../../../../units/typedText.ts';
import { findUnit } from '../../../../units/unit.ts';
import type { Run } from './runState.ts';

/** Digits that a conversion keeps. */
const DIGITS = 6;

/** Units that people type in place of the one that a test is kept in, for the sentence. */
const ALSO: Readonly<Record<string, string>> = {
  force: 'kgf, gf or lbf',
  time: 's, min, h or d',
  length: 'mm, cm or in',
  temperature: '°C or °F',
};

export type Converted = { ok: true; text: string } | { ok: false; sentence: string };

/** `2 lbf` as `8.89644` where newtons are kept, `10 d` as `240` where hours are; a bare number stays as it was typed. */
export function inUnitOf(text: string, unit: string, what: string): Converted {
  const typed = text.trim();
  const wanted = findUnit(unit);
  const bare = /^[\d.,\s/½¼¾+\-−]*$/.test(typed);
  if (typed === '' || bare) return { ok: true, text: typed };
  const expected =
    wanted === null || wanted.dimension === 'count' ? `a plain number of ${unit}` : `a number in ${wanted.symbol}`;
  const also = wanted === null ? '' : (ALSO[wanted.dimension] ?? '');
  const refused: Converted = {
    ok: false,
    sentence: `${what}: found "${typed}"; expected ${expected}.${also === '' ? '' : ` One in ${also} is converted.`}`,
  };
  if (wanted === null || wanted.dimension === 'count') {
    const { number, unit: own } = splitTyped(typed);
    const same = own !== '' && findUnit(own)?.dimension === 'count';
    return same ? { ok: true, text: number } : refused;
  }
  const read = readTypedQuantity(typed, wanted.dimension, unit);
  if (!read.ok) return refused;
  return { ok: true, text: String(Number(wanted.fromSI(read.value.value).toPrecision(DIGITS))) };
}

/** What stands in the place of an exposure that cannot be read, so that the other fields can be looked at beside it. */
const ANY_EXPOSURE = '1';

/** The set-up with every figure in the unit of its field, and a sentence about each that cannot be. */
export function setUpInUnits(
  run: Run,
  words: Readonly<Record<'exposure' | 'stress' | 'every' | 'stopAt', string>>,
): { changed: Partial<Run>; wrong: string[] } {
  // An exposure counted in days or minutes is kept in hours, as the clock and the other tests are.
  const unit = run.way === 'once' && findUnit(run.unit)?.dimension === 'time' ? 'h' : run.unit;
  const inHours = (text: string) =>
    unit !== run.unit && /^[\d.,\s]+$/.test(text) ? `${text.trim()} ${run.unit}` : text;
  const fields = [
    ['exposure', inHours(run.exposure), unit],
    ['stress', run.stress, run.stressUnit],
    ['every', run.every, unit],
    ['stopAt', run.stopAt, unit],
  ] as const;
  const changed: Partial<Run> = { unit };
  const wrong: string[] = [];
  for (const [field, text, of] of fields) {
    const converted = inUnitOf(text, of, words[field]);
    if (!converted.ok) wrong.push(converted.sentence);
    changed[field] = converted.ok ? converted.text : field === 'exposure' ? ANY_EXPOSURE : '';
  }
  return { changed, wrong };
}
