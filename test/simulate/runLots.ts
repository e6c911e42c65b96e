/** Draws lots, lets the program assay them through the whole path, and holds the findings against the truth. */
import type { Findings } from '../../src/findings/schema.ts';
import type { Entry } from '../../src/journal/entry.ts';
import type { Complication } from './complications.ts';
import { type Judged, judgeLot } from './judge.ts';
import { drawLot } from './lot.ts';
import { type Subset, shownOf } from './subsets.ts';
import { entriesOf } from './tables.ts';
import type { Benches } from './tools.ts';

export interface Run {
  /** Entries of one trial in, findings out. */
  assay: (entries: readonly Entry[]) => Findings;
  firstSeed: number;
  lots: number;
  bench: Benches;
  subsets: readonly Subset[];
  complication?: Complication;
  prevalence?: number;
}

export function runLots(run: Run): Judged[] {
  const judged: Judged[] = [];
  for (let index = 0; index < run.lots; index++) {
    const { bench, complication, prevalence } = run;
    const lot = drawLot({ seed: run.firstSeed + index, bench, complication, prevalence });
    for (const subset of run.subsets) {
      const entries = entriesOf(lot.name, shownOf(lot.tables, subset));
      judged.push(...judgeLot(lot, subset, run.assay(entries)));
    }
  }
  return judged;
}
