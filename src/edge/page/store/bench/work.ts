import { computed } from '@preact/signals';
import { workingOrder } from '../../../../findings/bench/workingOrder.ts';
import { benchList } from '../../../../findings/nextAct.ts';
import { folded } from '../journal/journal.ts';

/** What the working order follows from, as one text: it stays the same while readings come in. */
const orderedBy = computed(() => {
  const trial = folded.value;
  if (trial === null) return '';
  const pieces = trial.specimens.map(({ specimen, kind, cable }) => [specimen, kind, cable]);
  return JSON.stringify([trial.trial, trial.settings, pieces]);
});

/** Drawn anew only when pieces or plan change: hundreds of draws are too much for every reading. */
const order = computed(() => (orderedBy.value === '' ? [] : workingOrder(folded.peek()!)));

/** What the bench of the open trial still wants; null until its journal is there. */
export const benchWork = computed(() => (folded.value === null ? null : benchList(folded.value, order.value)));
