/** Which of a cable's claims stands under its drawing and in its row. */
import type { CableFindings, Claim } from './schema.ts';

/** Where the limit of a claim stands that no scale, rule or meter can judge. */
export const NOT_TESTABLE = 'not testable with these tools';
/** Why a limit for copper judges no cable whose label names another metal. */
export const FOR_COPPER_ONLY = 'This limit is for copper; the label says otherwise, so it is not judged by it.';

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
  return copperClaim(cable) ?? sizeClaim(cable);
}

/** The copper that the label claims; null when it claims none. */
export const copperClaim = (cable: CableFindings): Claim | null =>
  cable.claims.find((claim) => claim.reading === 'copper held') ?? null;

/** True when the metal is what falls short, which the word beside the outcome then says. */
export const failsOnMetal = (cable: CableFindings): boolean => metalClaim(cable)?.outcome === 'falls short';

/** The claim whose outcome is said of the cable, in the sentence, under the cut face and in its row: a wrong metal first. */
export const saidClaim = (cable: CableFindings): Claim | null =>
  failsOnMetal(cable) ? metalClaim(cable) : headlineClaim(cable);

/** What is said where no claim stands to be judged: nothing was measured, or the label claims nothing. */
export const withoutClaim = ({ claims, conductor_area: area, label }: CableFindings): string =>
  claims.length === 0 && area === null && label.claimed_area_mm2 !== null
    ? 'not measured'
    : 'label gives nothing to judge';

/** An outcome in words, and why there is none. */
export function outcomeWords({ outcome, source, note }: Claim): string {
  if (outcome !== null) return outcome;
  if (source === NOT_TESTABLE) return 'not testable here';
  return note === FOR_COPPER_ONLY ? 'not judged' : 'not measured';
}
