/** A large invented package for timing: 300 cables with eighteen readings each, and a small one of twelve cables. */
import { drawLot } from '../test/simulate/lot.ts';
import { filesOf } from '../test/simulate/tables.ts';

const SEED = 5400;
/** One piece per cable: 3 ohms, 3 lengths, 3 masses, 1 count and 8 diameters make eighteen readings. */
const ONE_PIECE = { name: 'plain', of: 'bench', pieceLength: 150 } as const;

/** Files of a package, name → text. */
export function packageOf(cables: number): { files: Map<string, string>; readings: number } {
  const { name, tables } = drawLot({ seed: SEED, bench: 'A', cables, complication: ONE_PIECE });
  const files = filesOf(name, `${cables} simulated cables`, 'Simulated for timing; no real cable.', tables);
  return { files, readings: tables.readings!.length };
}
