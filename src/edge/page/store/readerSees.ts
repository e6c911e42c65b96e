import type { PartPlace } from '../../../journal/kinds/seal.ts';
import { ampsOpened } from './amps/ampsAddress.ts';
import { bendOpened } from './bend/bendAddress.ts';
import { jacketOpened } from './jacket/jacketAddress.ts';
import type { Route } from './routeOf.ts';

/**
 * What a device that only reads gets at an address: the place itself, or a sentence, because something is recorded there, it is the
 * plan, or no sealed part of the trial holds it.
 */
export type ReaderSees = 'place' | 'records' | 'plan' | 'unpublished';

/** @param published places that a sealed part of the trial holds */
export function readerSees(route: Route, published: readonly PartPlace[]): ReaderSees {
  if (route.place === 'plan') return 'plan';
  if (route.place === 'bench' || isRecordedAt(route)) return 'records';
  if (!isMeasured(route.place)) return 'place';
  return published.some((place) => place === route.place) ? 'place' : 'unpublished';
}

/** Whether an address is looked at as it is, without knowing what was published. */
export const isOpenToReaders = (route: Route): boolean => readerSees(route, []) === 'place';

const MEASURED: readonly string[] = ['inside', 'bend', 'jacket', 'amps', 'standing'] satisfies PartPlace[];
const isMeasured = (place: string): place is PartPlace => MEASURED.includes(place);

/** Judging, marking, running a test, bringing a log in: these only make rows. */
function isRecordedAt(route: Route): boolean {
  if (route.place === 'bend') return ['judge', 'photo'].includes(bendOpened(route.opened).what);
  if (route.place === 'jacket') return jacketOpened(route.opened).what === 'run';
  return route.place === 'amps' && ['log', 'heat'].includes(ampsOpened(route.opened).what);
}
