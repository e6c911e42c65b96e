import { route } from './route.ts';
import { addressOf, type Route } from './routeOf.ts';

/** Opens something where the page stands, as a step of the browser's history: unlike going to another place, nothing scrolls. */
export function openHere(next: Route): void {
  history.pushState(null, '', addressOf(next));
  route.value = next;
}
