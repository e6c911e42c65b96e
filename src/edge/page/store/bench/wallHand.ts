/** Where round the cut face the wall in hand is read: filled in by the page, hour by hour. */
import { computed, signal } from '@preact/signals';
import { nextWallHour } from '../../../../findings/bench/wallHours.ts';
import { folded } from '../journal/journal.ts';
import { inHand } from './inHand.ts';

/** What somebody chose instead, for one reading. */
const chosen = signal<{ key: string; hour: string } | null>(null);

const keyNow = computed(() => {
  const act = inHand.value;
  return act?.item.quantity === 'wall_thickness' ? `${act.item.specimen}\u001f${act.repeat}` : null;
});

/** The place of the reading in hand, as it is written down; null for any other reading. */
export const wallHour = computed<string | null>(() => {
  const [key, act, trial] = [keyNow.value, inHand.value, folded.value];
  if (key === null || act === null || trial === null) return null;
  return chosen.value?.key === key ? chosen.value.hour : nextWallHour(trial, act.item.specimen);
});

export function chooseWallHour(hour: string): void {
  const key = keyNow.peek();
  if (key !== null) chosen.value = { key, hour };
}
