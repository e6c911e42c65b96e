import { computed } from '@preact/signals';
import { benchList } from '../../../../findings/nextAct.ts';
import { folded } from '../journal/journal.ts';

/** What the bench of the open trial still wants; null until its journal is there. */
export const benchWork = computed(() => (folded.value === null ? null : benchList(folded.value)));
