import { route } from '../route.ts';
import { addressOf, type Route } from '../routeOf.ts';
import { type JacketOpened, openedText } from './jacketAddress.ts';

/** The address of something in Jacket. */
export const jacketRoute = (trial: string, opened: JacketOpened): Route => ({
  place: 'jacket',
  trial,
  opened: openedText(opened),
});

/** Opens something in Jacket where the page stands, as a step of the browser's history. */
export function openInJacket(trial: string, opened: JacketOpened): void {
  const next = jacketRoute(trial, opened);
  history.pushState(null, '', addressOf(next));
  route.value = next;
}
