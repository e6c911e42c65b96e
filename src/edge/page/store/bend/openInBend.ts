import { route } from '../route.ts';
import { addressOf, type Route } from '../routeOf.ts';
import { type BendOpened, openedText } from './bendAddress.ts';

/** The address of something in Bend. */
export const bendRoute = (trial: string, opened: BendOpened): Route => ({
  place: 'bend',
  trial,
  opened: openedText(opened),
});

/** Opens something in Bend where the page stands, as a step of the browser's history. */
export function openInBend(trial: string, opened: BendOpened): void {
  const next = bendRoute(trial, opened);
  history.pushState(null, '', addressOf(next));
  route.value = next;
}
