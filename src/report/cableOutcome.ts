/** Which of a cable's claims stands under its drawing and in its row. */
import type { CableFindings, Claim } from '../findings/schema.ts';

/** Readings of a label that judge something other than its size. */
const NOT_SIZE = new Set(['copper held', 'metal', 'oxygen-free']);

/** The label's size as it reads itself; null when the label claims none that can be judged. */
export function sizeClaim(cable: CableFindings): Claim | null {
  return cable.claims.find((claim) => claim.of_label && !NOT_SIZE.has(claim.reading)) ?? null;
}

/** The label's metal; null when the label names none. */
export function metalClaim(cable: CableFindings): Claim | null {
  return cable.claims.find((claim) => claim.reading === 'metal') ?? null;
}

/** The claim that is said first of a cable: the copper that its label claims, else its size. */
export function headlineClaim(cable: CableFindings): Claim | null {
  return cable.claims.find((claim) => claim.reading === 'copper held') ?? sizeClaim(cable);
}

/** True when the metal is what falls short, which the word beside the outcome then says. */
export const failsOnMetal = (cable: CableFindings): boolean => metalClaim(cable)?.outcome === 'falls short';
