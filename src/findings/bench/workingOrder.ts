import { textHash } from '../../journal/textHash.ts';
import { stableShuffle } from '../../methods/decide/stableShuffle.ts';
import { STEPS, type Step } from '../../methods/decide/workMinutes.ts';
import type { Specimen, Trial } from '../../trial/trial.ts';
import { type PlanSettings, planSettings } from '../plan/settings.ts';
import { PIECES_OF_STEP, type WantedGroup, wantedGroups } from './wantedReadings.ts';

const seedOf = (trial: string) => textHash(`bench\n${trial}`);

/** Pieces that a group is read on, in the order in which they are on record. */
function piecesFor(group: WantedGroup, specimens: readonly Specimen[]): Specimen[] {
  const fit = specimens.filter((s) => s.kind === PIECES_OF_STEP[group.step]);
  if (group.onAll) return fit;
  const seen = new Set<string>();
  return fit.filter((s) => !seen.has(s.cable) && seen.add(s.cable));
}

/** A group of readings on a piece, one repeat of it. */
export interface Slot {
  group: WantedGroup;
  specimen: string;
  /** Which repeat, from 1. */
  round: number;
}

/** One group on all its pieces, once over for each repeat, the pieces in a new random order each time. */
function slotsOf(group: WantedGroup, pieces: readonly Specimen[], seed: string): Slot[] {
  const names = pieces.map((s) => s.specimen);
  return Array.from({ length: group.wanted }, (_, i) =>
    stableShuffle(names, `${seed} ${group.quantities[0]} ${i + 1}`).map((specimen) => ({
      group,
      specimen,
      round: i + 1,
    })),
  ).flat();
}

/** Before the cutting everything goes by quantity; after it, by specimen where that is wanted. */
const BEFORE_CUTTING: ReadonlySet<Step> = new Set(STEPS.slice(0, STEPS.indexOf('cut')));

function inWorkingOrder(slots: readonly Slot[], working: PlanSettings['working'], seed: string): Slot[] {
  if (working === 'by quantity') return [...slots];
  const first = slots.filter((s) => BEFORE_CUTTING.has(s.group.step));
  const later = slots.filter((s) => !BEFORE_CUTTING.has(s.group.step));
  const names = stableShuffle([...new Set(later.map((s) => s.specimen))], `${seed} pieces`);
  // A piece is done with one quantity before the next: a stable sort by the group's place keeps its repeats together.
  return [...first, ...names.flatMap((name) => later.filter((s) => s.specimen === name))];
}

/** What the working order follows from. */
export type OrderedBy = Pick<Trial, 'trial' | 'settings' | 'specimens'>;

/**
 * Everything that the plan wants read, in working order, whether it is read already or not. Follows from the trial's name,
 * its settings and its pieces alone, so that it stands while readings come in.
 */
export function workingOrder({ trial, settings, specimens }: OrderedBy): Slot[] {
  const plan = planSettings(settings);
  const seed = seedOf(trial);
  const slots = wantedGroups(plan).flatMap((group) => slotsOf(group, piecesFor(group, specimens), seed));
  return inWorkingOrder(slots, plan.working, seed);
}
