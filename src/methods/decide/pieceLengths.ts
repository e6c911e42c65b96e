import { bundleDiameter, contactInset, copperPerMetre } from './conductorSize.ts';

/** How many strands a size is made of, as far as the label or the eye says: it decides how stiff a cable is likely to be. */
export type Stranding = 'fine' | 'coarse' | 'unknown';

/** A length with the reason for it, in plain words. */
export interface ReasonedLength {
  /** m */
  length: number;
  why: string;
}

/** Cut lengths are rounded up to a hundredth of a metre: what one reads off a rule without thinking. Common practice, no source. */
const CUT_STEPS_PER_METRE = 100;
/** A piece to take apart is never shorter than this, m: shorter ends fray. Common practice, no source. */
const LEAST_APART = 0.3;
/** Longer than this nobody strips in one go, m. Common practice, no source. */
const MOST_APART = 3;
/** What scale and rule together may leave of doubt about mass per length, relative. */
const APART_DOUBT = 0.005;
/** A clamp takes this much of the bare end, m. Common practice, no source. */
const CURRENT_CLAMP = 0.02;

/** Rounds a length up to a whole centimetre, m; one that is whole but for its binary digits stays. */
export function roundUp(length: number): number {
  return Math.ceil(length * CUT_STEPS_PER_METRE - 1e-9) / CUT_STEPS_PER_METRE;
}

const millimetres = (length: number) => `${Math.round(length * 1000)} mm`;

/**
 * Length of a piece to strip and weigh: `L = (a / m′ + l) / 0.005`, a the scale's limit, l the rule's, m′ copper per metre of
 * the claimed size; at least 300 mm, at most 3 m.
 *
 * Only fixed limits count: a percentage of the reading does not shrink on a longer piece.
 *
 * @param area claimed, m²
 * @param scaleLimit kg
 * @param lengthLimit m
 */
export function apartLength(area: number, scaleLimit: number, lengthLimit: number): ReasonedLength {
  const wanted = roundUp((scaleLimit / copperPerMetre(area) + lengthLimit) / APART_DOUBT);
  if (wanted <= LEAST_APART)
    return { length: LEAST_APART, why: 'scale and rule leave less than 0.5 % of mass per length on 300 mm' };
  if (wanted > MOST_APART)
    return {
      length: MOST_APART,
      why: `half a per cent would take ${millimetres(wanted)} with this scale: a finer scale needs less`,
    };
  return { length: wanted, why: 'so long that scale and rule leave 0.5 % of mass per length' };
}

/** Bending length c = (EI/w)^(1/3) of heavy cable at a bench, m: from the most limber to the stiffest that was met. */
const LEAST_BENDING_LENGTH = 0.06;
const MOST_BENDING_LENGTH = 0.4;
/** A guess at c for the two ends of the sizes, straight between them in logarithms. Common practice, no source. */
const GUESS = { thin: { area: 8.4e-6, c: 0.09 }, thick: { area: 107e-6, c: 0.24 } };
/** How far fine or coarse stranding moves that guess. Common practice, no source. */
const BY_STRANDING: Readonly<Record<Stranding, number>> = { fine: 0.75, unknown: 1, coarse: 1.4 };
/** The overhang at which a rule settles the stiffness best: λ = 6, L = 1.82 c (by simulation). */
const BEST_OVERHANG = 1.82;
const LEAST_OVERHANG = 0.1;
const MOST_OVERHANG = 0.6;
const LEAST_CLAMP = 0.06;
const MOST_CLAMP = 0.1;
/** A clamp holds about so many diameters of the cable. Common practice, no source. */
const CLAMP_DIAMETERS = 6;

const clip = (x: number, least: number, most: number) => Math.min(most, Math.max(least, x));

/** Guessed bending length of a size, m, within 60 to 400 mm. For cutting a piece only: the piece itself will say. */
export function guessedBendingLength(area: number, stranding: Stranding): number {
  const { thin, thick } = GUESS;
  const slope = Math.log(thick.c / thin.c) / Math.log(thick.area / thin.area);
  const c = thin.c * (area / thin.area) ** slope * BY_STRANDING[stranding];
  return clip(c, LEAST_BENDING_LENGTH, MOST_BENDING_LENGTH);
}

/** Length of a piece to bend: the best overhang, 100 to 600 mm, and what the clamp holds, 60 to 100 mm. */
export function bendLength(area: number, stranding: Stranding, outerDiameter: number | null): ReasonedLength {
  const overhang = clip(BEST_OVERHANG * guessedBendingLength(area, stranding), LEAST_OVERHANG, MOST_OVERHANG);
  const clamp = clip(CLAMP_DIAMETERS * (outerDiameter ?? 1.5 * bundleDiameter(area)), LEAST_CLAMP, MOST_CLAMP);
  return {
    length: roundUp(overhang + clamp),
    why: `about ${millimetres(roundUp(overhang))} hangs free and ${millimetres(roundUp(clamp))} lies in the clamp; a guess until the first droop`,
  };
}

/**
 * Distance between the voltage contacts on a piece, m: the piece less a clamp and one and a half circumferences at each end.
 * Negative or nothing left: the piece is too short for four wires, and 0 is returned.
 */
export function contactDistanceOn(length: number, area: number): number {
  const left = length - 2 * (CURRENT_CLAMP + contactInset(area));
  return Math.max(left, 0);
}
