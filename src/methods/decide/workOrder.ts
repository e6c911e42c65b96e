import { stableShuffle } from './stableShuffle.ts';
import { minutesOf, STEPS, type Step, USUAL_MINUTES } from './workMinutes.ts';

/** One step wanted on some pieces. */
export interface StepWish {
  step: Step;
  specimens: readonly string[];
  /** Rounds over all pieces: the repeats. */
  repeats: number;
  /** What it takes, where that is not the usual of the step. */
  minutes?: number;
}

export interface WorkStep {
  step: Step;
  /** Each block goes once over all pieces in an order of its own: what drifts in an hour falls on all cables alike. */
  blocks: string[][];
  minutes: number;
}

/** What a person does next: one piece, one step, which round. */
export interface Task {
  step: Step;
  specimen: string;
  /** From 1. */
  round: number;
}

export interface WorkOrder {
  steps: WorkStep[];
  /** Everything, in the order in which it is done. */
  tasks: Task[];
  minutes: number;
  /** Hours that the cables lie in the room first; nobody need be there. */
  soakHours: number;
}

export interface WorkOptions {
  /** All pieces of a step before the next step, or everything on one piece before the next piece. */
  working: 'by quantity' | 'by specimen';
  /** Any text; the same seed gives the same order. */
  seed: string;
  soakHours: number;
  minutes?: typeof USUAL_MINUTES;
}

/** Steps that go over all cables before anything is cut, or cut them: no choice of working order moves them. */
const FIXED: ReadonlySet<Step> = new Set(['ohms', 'bend', 'cut']);

/**
 * The work in its order: ohms on the whole lengths, then bending, cutting, stripping, weighing, counting, walls, abuse. Within
 * a step the pieces come in random blocks. By specimen, what follows the cutting is done piece by piece instead, the pieces
 * in one random order.
 */
export function workOrder(wishes: readonly StepWish[], options: WorkOptions): WorkOrder {
  const { seed, working, soakHours, minutes = USUAL_MINUTES } = options;
  const steps = STEPS.flatMap((step) => {
    const wish = wishes.find((w) => w.step === step);
    if (!wish || wish.specimens.length === 0) return [];
    const rounds = Math.max(1, wish.repeats);
    const blocks = Array.from({ length: rounds }, (_, round) =>
      stableShuffle(wish.specimens, `${seed} ${step} ${round + 1}`),
    );
    const usual = minutesOf(step, wish.specimens.length, rounds, minutes);
    return [{ step, blocks, minutes: wish.minutes ?? usual }];
  });
  const all = steps.flatMap(tasksOf);
  const tasks = working === 'by quantity' ? all : bySpecimen(all, seed);
  return { steps, tasks, minutes: steps.reduce((sum, s) => sum + s.minutes, 0), soakHours };
}

function tasksOf({ step, blocks }: WorkStep): Task[] {
  return blocks.flatMap((block, i) => block.map((specimen) => ({ step, specimen, round: i + 1 })));
}

function bySpecimen(tasks: readonly Task[], seed: string): Task[] {
  const first = tasks.filter((t) => FIXED.has(t.step));
  const later = tasks.filter((t) => !FIXED.has(t.step));
  const names = stableShuffle([...new Set(later.map((t) => t.specimen))], `${seed} pieces`);
  return [...first, ...names.flatMap((name) => later.filter((t) => t.specimen === name))];
}
