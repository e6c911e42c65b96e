import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { stableShuffle } from '../methods/decide/stableShuffle.ts';
import { STEPS, type Step } from '../methods/decide/workMinutes.ts';
import type { Specimen, Trial } from '../trial/trial.ts';
import {
  countedReadings,
  PIECES_OF_STEP,
  suggestedTool,
  type WantedGroup,
  wantedGroups,
} from './bench/wantedReadings.ts';
import { benchTools } from './plan/benchTools.ts';
import { type PlanSettings, planSettings } from './plan/settings.ts';

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
  /** Cables whose strands nobody has scraped and looked at yet. */
  looks: string[];
}

const seedOf = (trial: string) => bytesToHex(sha256(utf8ToBytes(`bench\n${trial}`)));

/** Pieces that a group is read on, in the order in which they are on record. */
function piecesFor(group: WantedGroup, specimens: readonly Specimen[]): Specimen[] {
  const fit = specimens.filter((s) => s.kind === PIECES_OF_STEP[group.step]);
  if (group.onAll) return fit;
  const seen = new Set<string>();
  return fit.filter((s) => !seen.has(s.cable) && seen.add(s.cable));
}

interface Slot {
  group: WantedGroup;
  specimen: string;
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

/**
 * What the bench still wants, from the trial's pieces and its plan: every reading in working order, what is done and left,
 * and the one to take next. Struck and replaced readings do not count as done.
 *
 * Pieces that are not on record yet are no part of it: {@link planOf} proposes them.
 */
export function benchList(trial: Trial): BenchList {
  const settings = planSettings(trial.settings);
  const tools = benchTools(trial);
  const seed = seedOf(trial.trial);
  const done = countedReadings(trial);
  const pieces = new Map(trial.specimens.map((s) => [s.specimen, s]));
  const slots = wantedGroups(settings).flatMap((g) => slotsOf(g, piecesFor(g, trial.specimens), seed));
  const items = new Map<string, BenchItem>();
  const acts: BenchAct[] = [];
  for (const { group, specimen, round } of inWorkingOrder(slots, settings.working, seed))
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
    looks: settings.methods.has('eye') ? cablesNotLookedAt(trial) : [],
  };
}

function cablesNotLookedAt({ cables, evidence }: Pick<Trial, 'cables' | 'evidence'>): string[] {
  const looked = new Set(evidence.filter((e) => e.look === 'scraped_strand' && e.seen !== '').map((e) => e.cable));
  return cables.filter((c) => c.role !== 'control' && !looked.has(c.cable)).map((c) => c.cable);
}
