/** What is said of a cable whose metal is not the copper of its label, so that its metal's area is never taken for copper. */
import { copperClaim, failsOnMetal } from '../findings/cableOutcome.ts';
import type { CableFindings, Measured } from '../findings/schema.ts';

/** The copper that is inside, mm², where the metal found is not the one that the label claims; null elsewhere. */
export function copperInOtherMetal(cable: CableFindings): Measured | null {
  const found = failsOnMetal(cable) ? (copperClaim(cable)?.found ?? null) : null;
  return found?.unit === 'mm2' ? found : null;
}

/** The metal found in words, `copper-clad aluminium`; empty for copper, tinned or bare, and where none was found. */
export function otherMetal({ metal_found: found }: CableFindings): string {
  return found === null || found === 'copper' || found === 'tinned copper' ? '' : found;
}

/** `copper-clad aluminium, about 15 % copper`: the metal and how much of its volume is copper, as far as it is known. */
export function otherMetalWords(cable: CableFindings): string {
  const metal = otherMetal(cable);
  const share = cable.copper_share;
  return metal === '' || share === null ? metal : `${metal}, about ${Math.round(100 * share.value)} % copper`;
}
