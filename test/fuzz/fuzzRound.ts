import { type Fuzzed, newFuzzed, together } from './fuzzed.ts';
import { fuzzHttp } from './fuzzHttp.ts';
import { fuzzImport } from './fuzzImport.ts';

export { newFuzzed as nothingYet, together };

/** A folder without a page: its places answer that there is none. */
const NO_PAGE = 'no page here';

/** So many made-up bodies, half of them over HTTP and half as packages. The same seed gives the same bodies. */
export async function fuzzRound(bodies: number, seed: number): Promise<Fuzzed> {
  const half = Math.ceil(bodies / 2);
  return together(await fuzzHttp(half, seed, NO_PAGE), fuzzImport(bodies - half, seed));
}
