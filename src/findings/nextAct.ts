import type { Step } from '../methods/decide/workMinutes.ts';
import type { Trial } from '../trial/trial.ts';
import { type LookItem, wantedLooks } from './bench/wantedLooks.ts';
import { countedReadings, suggestedTool } from './bench/wantedReadings.ts';
import { type Slot, workingOrder } from './bench/workingOrder.ts';
import { benchTools } from './plan/benchTools.ts';
import { planSettings } from './plan/settings.ts';

/** One quantity wanted on one piece. */
export interface BenchItem {
  step: Step;
  specimen: string;
  /** Shown instead of the name while the trial is blind; empty when the piece has none. */
  code: string;
  cable: string;
  quantity: string;
  /** The listed tool to read it with; null when none is fit for it, or it needs none. */
  instrument: string | null;
  wanted: number;
  done: number;
  left: number;
}

/** The next reading to take. */
export interface BenchAct {
  item: BenchItem;
  /** Which repeat, from 1. */
  repeat: number;
}

export interface BenchList {
  /** In working order. */
  items: BenchItem[];
  /** Every reading still to be taken, in working order. */
  acts: BenchAct[];
  next: BenchAct | null;
  /** Readings wanted, taken of those, and left. More repeats than wanted count as wanted ones. */
  progress: { wanted: number; done: number; left: number };
  /** What eyes and a magnet are still to say, kind by kind; no part of the readings and of their progress. */
  looks: LookItem[];
}

/**
 * What the bench still wants, from the trial's pieces and its plan: every reading in working order, what is done and left,
 * and the one to take next. Struck and replaced readings do not count as done.
 *
 * Pieces that are not on record yet are no part of it: {@link planOf} proposes them.
 *
 * @param order the working order of the same trial, for whoever has it from before: a reading does not change it
 */
export function benchList(trial: Trial, order: readonly Slot[] = workingOrder(trial)): BenchList {
  const settings = planSettings(trial.settings);
  const tools = benchTools(trial);
  const done = countedReadings(trial);
  const pieces = new Map(trial.specimens.map((s) => [s.specimen, s]));
  const items = new Map<string, BenchItem>();
  const acts: BenchAct[] = [];
  for (const { group, specimen, round } of order)
    for (const quantity of group.quantities) {
      const key = `${specimen}\u001f${quantity}`;
      let item = items.get(key);
      if (!item) {
        const piece = pieces.get(specimen)!;
        const taken = Math.min(group.wanted, done(specimen, quantity));
        item = {
          step: group.step,
          specimen,
          code: piece.code,
          cable: piece.cable,
          quantity,
          instrument: suggestedTool(quantity, tools),
          wanted: group.wanted,
          done: taken,
          left: group.wanted - taken,
        };
        items.set(key, item);
      }
      if (round > item.done) acts.push({ item, repeat: round });
    }
  const list = [...items.values()];
  const wanted = list.reduce((sum, i) => sum + i.wanted, 0);
  const left = list.reduce((sum, i) => sum + i.left, 0);
  return {
    items: list,
    acts,
    next: acts[0] ?? null,
    progress: { wanted, done: wanted - left, left },
    looks: wantedLooks(trial, settings),
  };
}
