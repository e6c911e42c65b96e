import type { PartPlace } from '../../../../journal/kinds/seal.ts';

/** The places as the ruler names them. */
export const PLACE_NAMES: Readonly<Record<PartPlace, string>> = {
  inside: 'Inside',
  bend: 'Bend',
  jacket: 'Jacket',
  amps: 'Amps',
  standing: 'Standing',
};

export const placeWords = (places: readonly PartPlace[]): string =>
  places.map((place) => PLACE_NAMES[place]).join(', ');
