/** What can go wrong at a bench or lie in a cable that no model expects. */
import { cladAluminium, cladSteel, type StrandMetal, tinnedCopper } from './metals.ts';
import type { Draws } from './random.ts';

export interface Complication {
  /** Stable name, used on the command line and in the table of figures. */
  name: string;
  /** A fault of the bench touches every cable; one of a cable can be rare in its lot. */
  of: 'bench' | 'cable';
  /** Metal of the cables concerned; the market's mixture when absent. */
  metal?: (draws: Draws) => StrandMetal;
  /** mΩ added to the resistance, as two wires add their contacts. */
  contactMilliohms?: number;
  /** Strands counted over strands there. */
  countShare?: number;
  /** mm by which the written length of a weighed piece exceeds its strands' mean. */
  lengthExcess?: number;
  /** Weighed over true mass: paper left between the strands. */
  massShare?: number;
  /** Weighed over true mass on the second specimen alone, up or down. */
  secondSpecimenError?: number;
  /** K by which the copper is warmer than what was written down. */
  warmer?: number;
  /** mm; every lot of this complication weighs pieces of this length. */
  pieceLength?: number;
  /** Which reading ought to be taken again, when redundancy can tell. */
  culprit?: 'mass' | 'resistance' | 'strands';
}

export const COMPLICATIONS: readonly Complication[] = [
  { name: 'tin half-way, 97.8 to 100 % IACS', of: 'cable', metal: (draws) => tinnedCopper(draws, 0.978, 1) },
  { name: 'heavy tin, 93 to 95.5 % IACS', of: 'cable', metal: (draws) => tinnedCopper(draws, 0.93, 0.955) },
  { name: 'clad aluminium with 20 to 30 % copper', of: 'cable', metal: (draws) => cladAluminium(draws, 0.2, 0.3) },
  { name: 'copper-clad steel', of: 'cable', metal: cladSteel },
  { name: 'two-wire ohms, +0.3 mΩ over 1 m', of: 'bench', contactMilliohms: 0.3, culprit: 'resistance' },
  { name: 'strand count short by 1/7', of: 'cable', countShare: 6 / 7, culprit: 'strands' },
  { name: 'strand count short by 1/19', of: 'cable', countShare: 18 / 19, culprit: 'strands' },
  { name: 'length 1 mm long on 150 mm', of: 'cable', lengthExcess: 1, pieceLength: 150 },
  { name: 'separator paper, +2 % mass', of: 'cable', massShare: 1.02 },
  { name: "one specimen's mass 10 % wrong", of: 'cable', secondSpecimenError: 0.1, pieceLength: 300, culprit: 'mass' },
  { name: 'wire 6 K warmer than noted', of: 'bench', warmer: 6 },
];
