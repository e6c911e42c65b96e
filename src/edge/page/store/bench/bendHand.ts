/** What goes with a reading by bending: the set that it belongs to, and which way up, loading or unloading, where measured. */
import { computed, signal } from '@preact/signals';
import {
  afterInPush,
  bendActOf,
  droopSetFor,
  faceFor,
  type PushRun,
  pushRunFor,
} from '../../../../findings/bench/bendSets.ts';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { readingValue } from '../../../../trial/makeReading.ts';
import { folded } from '../journal/journal.ts';
import { inHand } from './inHand.ts';

/** What somebody chose instead of what the page proposes, until the next reading. */
const faceChosen = signal<{ key: string; face: 'up' | 'down' } | null>(null);
const pushChosen = signal<{ specimen: string; run: PushRun; branch: 'loading' | 'unloading' } | null>(null);
export const coilEdge = signal<'inside' | 'outside' | 'middle'>('inside');

const keyOf = ({ item, repeat }: BenchAct) => `${item.specimen}\u001f${item.quantity}\u001f${repeat}`;

/** The act of bending in hand; null for any other reading. */
export const bendAct = computed(() => (inHand.value === null ? null : bendActOf(inHand.value.item.quantity)));

/** Which way up the piece in hand lies. */
export const face = computed<'up' | 'down'>(() => {
  const [act, trial] = [inHand.value, folded.value];
  if (act === null || trial === null) return 'up';
  return faceChosen.value?.key === keyOf(act) ? faceChosen.value.face : faceFor(trial, act.item.specimen);
});

export function chooseFace(next: 'up' | 'down'): void {
  const act = inHand.peek();
  if (act !== null) faceChosen.value = { key: keyOf(act), face: next };
}

/** Which push of the piece in hand, and whether it is pressed down or let back. */
export const push = computed<{ run: PushRun; branch: 'loading' | 'unloading' }>(() => {
  const [act, trial] = [inHand.value, folded.value];
  if (act === null || trial === null) return { run: 'first push', branch: 'loading' };
  const { specimen } = act.item;
  if (pushChosen.value?.specimen === specimen) return pushChosen.value;
  return { run: pushRunFor(trial, specimen), branch: 'loading' };
});

export function choosePush(next: Partial<{ run: PushRun; branch: 'loading' | 'unloading' }>): void {
  const act = inHand.peek();
  if (act !== null) pushChosen.value = { specimen: act.item.specimen, ...push.peek(), ...next };
}

/** The columns `set` and `position` of a reading about to be kept, as far as bending fills them in. */
export function bendCells(act: BenchAct, text: string, unit: string): Record<string, string> {
  const { specimen, quantity } = act.item;
  const trial = folded.peek();
  const kind = bendActOf(quantity);
  if (trial === null || kind === null) return {};
  if (kind === 'droop') {
    const read = quantity === 'overhang' ? readingValue(quantity, text, unit) : null;
    const set = droopSetFor(trial, specimen, read?.ok ? read.value.value : null);
    return quantity === 'overhang' ? { set, position: '' } : { set, position: face.peek() };
  }
  if (kind === 'push') {
    const { run, branch } = push.peek();
    return { set: run, position: quantity === 'push_span' ? '' : branch };
  }
  return { position: quantity === 'coil_diameter' ? coilEdge.peek() : '' };
}

/** What is taken up after a reading of a push: its partner. null for anything else. */
export const partnerOf = (act: BenchAct): string | null => afterInPush(act.item.quantity);
