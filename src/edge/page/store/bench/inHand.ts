/** The reading that is being taken: the next in working order, or the one that was chosen. */
import { computed, signal } from '@preact/signals';
import { PIECES_OF_STEP, suggestedTool } from '../../../../findings/bench/wantedReadings.ts';
import type { BenchAct, BenchItem } from '../../../../findings/nextAct.ts';
import { benchTools } from '../../../../findings/plan/benchTools.ts';
import { quantityNamed } from '../../../../journal/quantities.ts';
import { STEPS, type Step } from '../../../../methods/decide/workMinutes.ts';
import { folded } from '../journal/journal.ts';
import { benchWork } from './work.ts';

/** A quantity on a piece. */
export interface Chosen {
  specimen: string;
  quantity: string;
}

/** What somebody chose to take now; null: the next in order. */
const chosen = signal<Chosen | null>(null);
/** What was put off until everything else is done. */
const putOff = signal<ReadonlySet<string>>(new Set());

const keyOf = ({ specimen, quantity }: Chosen) => `${specimen}\u001f${quantity}`;

/** Every reading left to take, in working order, what was put off last. */
export const actsLeft = computed<BenchAct[]>(() => {
  const acts = benchWork.value?.acts ?? [];
  const late = putOff.value;
  if (late.size === 0) return acts;
  const isLate = (act: BenchAct) => late.has(keyOf(act.item));
  return [...acts.filter((act) => !isLate(act)), ...acts.filter(isLate)];
});

/** The reading to take now; null when there is no piece to take one on. With nothing left, one more of the last. */
export const inHand = computed<BenchAct | null>(() => {
  const next = actsLeft.value[0];
  if (chosen.value === null && next !== undefined) return next;
  const pick = chosen.value ?? lastWanted();
  if (pick === null) return null;
  const item = benchWork.value?.items.find((each) => keyOf(each) === keyOf(pick)) ?? unplanned(pick);
  return item && { item, repeat: takenOf(pick) + 1 };
});

/** What is taken up when nothing is left: the last of the plan, or the mass of the first piece where there is no plan. */
function lastWanted(): Chosen | null {
  const last = benchWork.value?.items.at(-1);
  if (last !== undefined) return last;
  const piece = folded.value?.specimens[0];
  return piece === undefined ? null : { specimen: piece.specimen, quantity: 'specimen_mass' };
}

/** The reading after the one in hand. */
export const afterThis = computed<BenchAct | null>(() => neighbour(1));

/** Readings of a quantity on a piece that count. */
function takenOf({ specimen, quantity }: Chosen): number {
  const readings = folded.value?.readings ?? [];
  return readings.filter((r) => r.standing === 'counted' && r.specimen === specimen && r.quantity === quantity).length;
}

/** A reading that the plan does not ask for; null when the piece is not on record. */
function unplanned({ specimen, quantity }: Chosen): BenchItem | null {
  const trial = folded.value;
  const piece = trial?.specimens.find((each) => each.specimen === specimen);
  if (!trial || !piece) return null;
  const instrument = suggestedTool(quantity, benchTools(trial));
  const { code, cable, kind } = piece;
  return { step: stepOf(quantity, kind), specimen, code, cable, quantity, instrument, wanted: 0, done: 0, left: 0 };
}

/** The step at which a quantity is usually taken, for what is said before it. */
function stepOf(quantity: string, kind: string): Step {
  if (quantity === 'resistance' || quantity === 'test_voltage' || quantity === 'test_current') return 'ohms';
  if (quantity.startsWith('strand') || quantity.startsWith('bundle')) return 'strands';
  if (quantity === 'outer_diameter' || quantity === 'wall_thickness' || quantity === 'hardness') return 'wall';
  if (quantityNamed(quantity)?.pieces.includes('bend')) return 'bend';
  return STEPS.find((step) => PIECES_OF_STEP[step] === kind && step !== 'ohms' && step !== 'bend') ?? 'weigh';
}

/** Where the reading in hand stands among what is left; −1 when it is none of it. */
function place(): number {
  const now = inHand.value;
  if (now === null) return -1;
  const acts = actsLeft.value;
  const exact = acts.findIndex((act) => keyOf(act.item) === keyOf(now.item) && act.repeat === now.repeat);
  return exact >= 0 ? exact : acts.findIndex((act) => keyOf(act.item) === keyOf(now.item));
}

function neighbour(by: 1 | -1): BenchAct | null {
  const acts = actsLeft.value;
  const at = place();
  return at < 0 ? (acts[0] ?? null) : (acts[at + by] ?? null);
}

const pickOf = (act: BenchAct | null): Chosen | null =>
  act && { specimen: act.item.specimen, quantity: act.item.quantity };

/** Takes up a quantity on a piece, wanted or not. */
export function takeUp(pick: Chosen): void {
  chosen.value = pick;
}

/** Goes to the next or the last reading in working order; stays where there is none. */
export function step(by: 1 | -1): void {
  const next = neighbour(by);
  if (next !== null) chosen.value = pickOf(next);
}

/** Puts the reading in hand off until the rest is done. */
export function later(): void {
  const now = inHand.value;
  if (now === null) return;
  const next = afterThis.value;
  putOff.value = new Set([...putOff.value, keyOf(now.item)]);
  chosen.value = next === null || keyOf(next.item) === keyOf(now.item) ? null : pickOf(next);
}

/**
 * Goes on after a reading was recorded: to the one that follows in working order. A reading beyond what is wanted stays in
 * hand, because whoever takes one more may take yet another.
 */
export function goOnFrom(act: BenchAct): void {
  if (act.item.left === 0) return;
  const next = afterThis.value;
  const isLast = next === null && actsLeft.value.length <= 1;
  chosen.value = isLast ? pickOf(act) : pickOf(next);
}

/** Begins anew with the first reading left, as when another trial is opened. */
export function beginAnew(): void {
  chosen.value = null;
  putOff.value = new Set();
}
