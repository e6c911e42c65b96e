import {
  analyseEndurance,
  type EnduranceAnalysis,
  firstLastsLonger,
} from '../../methods/jacket/endurance/compareCables.ts';
import { shownMedian } from '../../methods/jacket/endurance/lasting.ts';
import type { PerWall } from '../shapes/jacket.ts';
import type { CableLives } from './enduranceTest.ts';
import { medianFound } from './lasts.ts';
import type { TestRead } from './readEndurance.ts';

/**
 * The same analysis with every amount divided by the mean wall of its cable: parts a tough jacket from a thick one. Only for tests that
 * wear or press through a wall, and cables whose wall is known. The wall's own doubt, one or two per cent, is small beside the rest
 * and left out.
 */
export function perWallOf(
  test: TestRead,
  compared: readonly CableLives[],
  absolute: EnduranceAnalysis | null,
  { level, wallOf }: { level: number; wallOf: ReadonlyMap<string, number> },
): PerWall | null {
  if (!test.protocol?.perWall) return null;
  const walled = compared.flatMap((c) => {
    const wall = wallOf.get(c.found.cable);
    return wall !== undefined && wall > 0 ? [{ ...c, wall }] : [];
  });
  if (walled.length === 0) return null;
  const analysis = analyseEndurance(
    walled.map(({ lives, wall }) => lives.map(({ from, until }) => ({ from: from / wall, until: until / wall }))),
    { level, seed: null },
  );
  const name = (i: number) => walled[i].found.name;
  return {
    unit: `${test.unit} per mm of wall`,
    cables: walled.map(({ found }, i) => ({
      cable: found.cable,
      name: found.name,
      median: medianFound(shownMedian(analysis.cables[i])),
      band: analysis.band[i],
    })),
    pairs: analysis.pairs.map((p) => ({
      a: walled[p.a].found.cable,
      b: walled[p.b].found.cable,
      ratio: p.ratio,
      interval: p.interval,
      p_holm: p.pHolm,
      parted: p.parted,
    })),
    sentence: walled.length === compared.length && absolute ? thickOrTough(absolute, analysis, name) : '',
  };
}

/** What dividing by the wall changes, pair by pair. */
function thickOrTough(absolute: EnduranceAnalysis, perWall: EnduranceAnalysis, name: (i: number) => string): string {
  const thick: string[] = [];
  const tough: string[] = [];
  absolute.pairs.forEach((p, i) => {
    const per = perWall.pairs[i];
    const [longer, shorter] = firstLastsLonger(p) ? [p.a, p.b] : [p.b, p.a];
    if (p.parted && !per.parted) thick.push(`${name(longer)} over ${name(shorter)}`);
    if (!p.parted && per.parted) {
      const [better, other] = firstLastsLonger(per) ? [per.a, per.b] : [per.b, per.a];
      tough.push(`${name(better)} over ${name(other)}`);
    }
  });
  const said: string[] = [];
  if (thick.length > 0)
    said.push(`Per millimetre of wall the lead is no longer shown of ${thick.join(', ')}: more wall may be all of it.`);
  if (tough.length > 0)
    said.push(`Per millimetre of wall a lead shows that was not there before, of ${tough.join(', ')}.`);
  if (said.length === 0 && absolute.pairs.some((p) => p.parted))
    said.push('Per millimetre of wall the same cables are parted: the walls do not explain the order.');
  return said.join(' ');
}
