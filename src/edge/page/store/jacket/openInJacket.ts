import { openHere } from '../openHere.ts';
import type { Route } from '../routeOf.ts';
import { type JacketOpened, openedText } from './jacketAddress.ts';

/** The address of something in Jacket. */
export const jacketRoute = (trial: string, opened: JacketOpened): Route => ({
  place: 'jacket',
  trial,
  opened: openedText(opened),
});

/** Opens something in Jacket where the page stands. */
export const openInJacket = (trial: string, opened: JacketOpened): void => openHere(jacketRoute(trial, opened));
