import { openHere } from '../openHere.ts';

/** Opens the sheet of a cable in Standing, or closes it. */
export const openInStanding = (trial: string, cable: string | null): void =>
  openHere({ place: 'standing', trial, opened: cable });
