import { openHere } from '../openHere.ts';
import type { Route } from '../routeOf.ts';
import { type BendOpened, openedText } from './bendAddress.ts';

/** The address of something in Bend. */
export const bendRoute = (trial: string, opened: BendOpened): Route => ({
  place: 'bend',
  trial,
  opened: openedText(opened),
});

/** Opens something in Bend where the page stands. */
export const openInBend = (trial: string, opened: BendOpened): void => openHere(bendRoute(trial, opened));
