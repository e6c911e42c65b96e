import type { ConductorMetal, Jacket } from '../materials.ts';

/** A cable as heat sees it, per metre of one cable. SI. */
export interface HeatedCable {
  metal: ConductorMetal;
  /** Ω/m at 20 °C. */
  resistance20: number;
  /** m², metal, with the lay: metal volume per metre of cable. */
  metalVolume: number;
  /** m: the round bundle of strands, and over the jacket. */
  bundleDiameter: number;
  outerDiameter: number;
  jacket: Jacket;
}

/** Section of the jacket, m². */
export const jacketArea = ({ outerDiameter, bundleDiameter }: Pick<HeatedCable, 'outerDiameter' | 'bundleDiameter'>) =>
  (Math.PI / 4) * (outerDiameter ** 2 - bundleDiameter ** 2);

/** What a cable's wall sets against heat on its way out, K m/W: ln(D/d)/(2 π k). */
export const wallResistance = ({ outerDiameter, bundleDiameter, jacket }: HeatedCable): number =>
  Math.log(outerDiameter / bundleDiameter) / (2 * Math.PI * jacket.conductivity);

/** Where the cable runs. */
export interface Surroundings {
  /** K, of air and walls alike. */
  ambient: number;
  /** How many equal cables lie touching, all carrying the same current; 1 for one by itself. */
  bundle: number;
  /** Carpet or trim round the whole; null for none. m, W/(m K). */
  layer: { thickness: number; conductivity: number } | null;
  /** Multiplies what the surface gives off: from the trial's own heating test; 1 for the model as it is. */
  lossFactor: number;
}

export const inOpenAir = (ambient: number): Surroundings => ({ ambient, bundle: 1, layer: null, lossFactor: 1 });

/** Most cables in a bundle that the shape of it is known for. */
export const MOST_IN_BUNDLE = 61;

const named = (what: string, found: number): never => {
  throw new RangeError(`${what}, got ${found}`);
};

/** @throws RangeError that names what cannot be: a resistance of zero, a jacket inside its conductor, a bundle of none. */
export function requireCable(c: HeatedCable): void {
  if (!(c.resistance20 > 0)) named('a resistance per metre is above zero', c.resistance20);
  if (!(c.bundleDiameter > 0)) named('a bundle of strands has a diameter above zero', c.bundleDiameter);
  if (!(c.outerDiameter >= c.bundleDiameter)) named('a jacket lies outside its conductor', c.outerDiameter);
  if (!(c.metalVolume > 0)) named('a conductor has metal', c.metalVolume);
}

/** @throws RangeError that names what cannot be. */
export function requireSurroundings(s: Surroundings): void {
  if (!(s.ambient > 0)) named('surroundings are above absolute zero, in K', s.ambient);
  if (!(Number.isInteger(s.bundle) && s.bundle >= 1 && s.bundle <= MOST_IN_BUNDLE))
    named(`a bundle is 1 to ${MOST_IN_BUNDLE} cables`, s.bundle);
  if (s.layer && !(s.layer.thickness > 0 && s.layer.conductivity > 0))
    named('a layer has a thickness and a conductivity above zero', s.layer.thickness);
  if (!(s.lossFactor > 0)) named('the factor of the loss is above zero', s.lossFactor);
}
