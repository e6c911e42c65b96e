import { route } from '../route.ts';
import { addressOf } from '../routeOf.ts';

/** Opens the sheet of a cable in Standing, or closes it, as a step of the browser's history. */
export function openInStanding(trial: string, cable: string | null): void {
  const next = { place: 'standing', trial, opened: cable } as const;
  history.pushState(null, '', addressOf(next));
  route.value = next;
}
