import { route } from '../route.ts';
import { addressOf, type Route } from '../routeOf.ts';
import { type AmpsOpened, ampsText } from './ampsAddress.ts';

/** The address of something in Amps. */
export const ampsRoute = (trial: string, opened: AmpsOpened): Route => ({
  place: 'amps',
  trial,
  opened: ampsText(opened),
});

/** Opens something in Amps where the page stands, as a step of the browser's history. */
export function openInAmps(trial: string, opened: AmpsOpened): void {
  const next = ampsRoute(trial, opened);
  history.pushState(null, '', addressOf(next));
  route.value = next;
}
