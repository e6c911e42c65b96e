import { openHere } from '../openHere.ts';
import type { Route } from '../routeOf.ts';
import { type AmpsOpened, ampsText } from './ampsAddress.ts';

/** The address of something in Amps. */
export const ampsRoute = (trial: string, opened: AmpsOpened): Route => ({
  place: 'amps',
  trial,
  opened: ampsText(opened),
});

/** Opens something in Amps where the page stands. */
export const openInAmps = (trial: string, opened: AmpsOpened): void => openHere(ampsRoute(trial, opened));
