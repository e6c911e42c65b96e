import { benchWork } from '../store/bench/work.ts';
import { readsOnly } from '../store/devices.ts';
import { folded } from '../store/journal/journal.ts';
import { addressOf, type Route } from '../store/routeOf.ts';
import type { PlaceOnRuler } from './places.tsx';

/** The places of a trial in the order of the work, each with how far it is. */
export function trialPlaces(trial: string, here: Route['place']): PlaceOnRuler[] {
  const at = (name: string, route: Route, state = ''): PlaceOnRuler => ({
    name,
    href: addressOf(route),
    here: route.place === here,
    state,
  });
  // Plan and Bench are for those who measure.
  const forWork = () => [
    at('Plan', { place: 'plan', trial, sheet: null }),
    at('Bench', { place: 'bench', trial, slate: false }, benchState()),
  ];
  return [
    at('Shelf', { place: 'shelf' }),
    ...(readsOnly.value ? [] : forWork()),
    at('Inside', { place: 'inside', trial, cable: null }, insideState()),
    at('Bend', { place: 'bend', trial, opened: null }),
    at('Jacket', { place: 'jacket', trial, opened: null }),
    at('Amps', { place: 'amps', trial, opened: null }),
    at('Standing', { place: 'standing', trial, opened: null }),
    at('Publish', { place: 'publish', trial, opened: null }),
    at('History', { place: 'history', trial, at: null }),
  ];
}

function benchState(): string {
  const work = benchWork.value;
  return work === null || work.progress.wanted === 0 ? '' : `${work.progress.done} of ${work.progress.wanted}`;
}

function insideState(): string {
  const count = folded.value?.cables.filter((cable) => cable.role === 'compared').length ?? 0;
  if (folded.value === null) return '';
  return count === 1 ? '1 cable' : `${count} cables`;
}
