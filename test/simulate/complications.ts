/** What can go wrong at a bench or lie in a cable that no model expects: one complication makes a whole lot. */
import { cladAluminium, cladSteel, type StrandMetal, tinnedCopper } from './metals.ts';
import type { Draws } from './random.ts';

export interface Complication {
  /** Stable name, used on the command line and in the table of figures. */
  name: string;
  /** Metal of every cable; the market's mixture when absent. */
  metal?: (draws: Draws) => StrandMetal;
  /** mΩ added to every resistance, as two wires add their contacts. */
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
  { name: 'tin half-way, 97.8 to 100 % IACS', metal: (draws) => tinnedCopper(draws, 0.978, 1) },
  { name: 'heavy tin, 93 to 95.5 % IACS', metal: (draws) => tinnedCopper(draws, 0.93, 0.955) },
  { name: 'clad aluminium with 20 to 30 % copper', metal: (draws) => cladAluminium(draws, 0.2, 0.3) },
  { name: 'copper-clad steel', metal: cladSteel },
  { name: 'two-wire ohms, +0.3 mΩ over 1 m', contactMilliohms: 0.3, culprit: 'resistance' },
  { name: 'strand count short by 1/7', countShare: 6 / 7, culprit: 'strands' },
  { name: 'strand count short by 1/19', countShare: 18 / 19, culprit: 'strands' },
  { name: 'length 1 mm long on 150 mm', lengthExcess: 1, pieceLength: 150 },
  { name: 'separator paper, +2 % mass', massShare: 1.02 },
  { name: "one specimen's mass 10 % wrong", secondSpecimenError: 0.1, pieceLength: 300, culprit: 'mass' },
  { name: 'wire 6 K warmer than noted', warmer: 6 },
];
