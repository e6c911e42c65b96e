import { describe, expect, it } from 'vitest';
import { smallPage } from '../edge/server/bench.ts';
import { tempFolder } from '../support/tempFolder.ts';
import { fuzzHttp } from './fuzzHttp.ts';
import { fuzzImport } from './fuzzImport.ts';

/** Enough to find again what has been found before; `node scripts/fuzz.mjs --bodies 1000000` goes on from here. */
const BODIES = 1500;
const SEED = 20261125;
const page = smallPage(tempFolder());

describe('made-up input', () => {
  it('over HTTP: never a 500, never an acknowledged entry lost', async () => {
    const { troubles, bodies, accepted, outcomes } = await fuzzHttp(BODIES, SEED, page);
    expect(troubles).toEqual([]);
    expect(bodies).toBe(BODIES);
    // The input is worth something only if all kinds of outcome come of it.
    expect(accepted).toBeGreaterThan(100);
    for (const status of ['200', '400', '401', '403', '404', '405', '415'])
      expect(Object.keys(outcomes)).toContain(status);
  });

  it('in packages and archives: read, or refused in sentences', () => {
    const { troubles, bodies, accepted, outcomes } = fuzzImport(BODIES, SEED);
    expect(troubles).toEqual([]);
    expect(bodies).toBe(BODIES);
    expect(accepted).toBeGreaterThan(100);
    expect(Object.keys(outcomes).sort()).toEqual(['archive refused', 'read', 'refused']);
  });
});
