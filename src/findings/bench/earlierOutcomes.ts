import { cellNumber } from '../../journal/cellQuantity.ts';
import { protocolOf } from '../../methods/jacket/protocols/protocols.ts';
import { rowName } from '../../trial/rowName.ts';
import type { Trial } from '../../trial/trial.ts';
import { typedText } from '../../units/typedText.ts';

/** What a piece came to in the same test before. */
export interface EarlierOutcome {
  /** Name of its row, to be put aside by. */
  which: string;
  failed: boolean;
  amount: number;
  /** `120 strokes` */
  shown: string;
}

/** A test as it is about to be kept: other loads and other exposures are other tests. */
export interface TestInHand {
  test: string;
  stress: string;
  exposure: string;
}

const plain = (text: string) => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** Outcomes of this piece in this test that stand, in the order in which they were said. */
export function earlierOutcomes(
  { endurance }: Pick<Trial, 'endurance'>,
  specimen: string,
  { test, stress, exposure }: TestInHand,
): EarlierOutcome[] {
  const replaced = new Set(endurance.map(({ row }) => (row.replaces ?? '').trim()).filter((name) => name !== ''));
  const number = (text: string | undefined) => {
    const read = cellNumber((text ?? '').trim());
    return read.ok ? read.value.value : null;
  };
  const sameLoad = (load: string) =>
    number(load) === null || number(stress) === null || number(load) === number(stress);
  const once = protocolOf(test)?.kind === 'passed';
  return endurance.flatMap(({ specimen: piece, row }) => {
    const amount = number(row.amount);
    if (piece !== specimen || plain(row.test ?? '') !== plain(test) || amount === null) return [];
    if (replaced.has((row.endurance ?? '').trim()) || !sameLoad(row.stress ?? '')) return [];
    if (once && exposure.trim() !== '' && number(exposure) !== amount) return [];
    const failed = plain(row.outcome ?? '') === 'failed';
    return [
      { which: rowName('endurance', row), failed, amount, shown: typedWithUnit(row.amount ?? '', row.unit ?? '') },
    ];
  });
}

const typedWithUnit = (amount: string, unit: string) => `${typedText(amount, '')} ${unit.trim()}`.trim();

/** What an earlier outcome means for one that is kept now, by the rules that the findings go by; empty where there is none. */
export function earlierSentence(earlier: readonly EarlierOutcome[]): string {
  const failure = earlier.find(({ failed }) => failed);
  if (failure)
    return `It failed in this test before, at ${failure.shown}. A piece fails once: that one counts, and what is kept now does not.`;
  const [farthest] = [...earlier].sort((a, b) => b.amount - a.amount);
  return farthest
    ? `It survived ${farthest.shown} of this test before. The two count as one test that went on: a failure has to come later than that, counted from the beginning.`
    : '';
}
