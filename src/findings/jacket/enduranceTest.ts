import { group } from 'd3-array';
import {
  analyseEndurance,
  type EnduranceAnalysis,
  firstLastsLonger,
} from '../../methods/jacket/endurance/compareCables.ts';
import { type Lasting, shownMedian } from '../../methods/jacket/endurance/lasting.ts';
import { mean } from '../../numerics/describe.ts';
import type { Lifetime } from '../../numerics/survival/lifetime.ts';
import { bandsOf } from '../flex/words.ts';
import type { CableFindings } from '../schema.ts';
import type { EnduranceCable, EndurancePair, EnduranceTest } from '../shapes/jacket.ts';
import { amountPairs, neighboursOf } from './amountPairs.ts';
import { cableText } from './cableText.ts';
import { howWeKnow } from './howWeKnow.ts';
import { lastsOf, medianFound } from './lasts.ts';
import { perWallOf } from './perWall.ts';
import { type EnduranceRow, lifetimeOf, type TestRead } from './readEndurance.ts';
import { smallSamples } from './smallSamples.ts';
import { lastingSentence, partedSentence } from './words.ts';

export interface TestContext {
  cables: readonly CableFindings[];
  /** Mean wall of cables where it is known, mm. */
  wallOf: ReadonlyMap<string, number>;
  level: number;
  /** Hexadecimal, for this test alone. */
  seed: string;
}

/** The pieces of one cable in one test. */
export interface CableLives {
  found: CableFindings;
  rows: EnduranceRow[];
  lives: Lifetime[];
}

/** Cables that were tested, in the order of the trial. */
export function livesByCable(test: TestRead, cables: readonly CableFindings[]): CableLives[] {
  const of = group(test.rows, (r) => r.cable);
  return cables.flatMap((found) => {
    const rows = of.get(found.cable);
    return rows ? [{ found, rows, lives: rows.map(lifetimeOf) }] : [];
  });
}

/** What every test says of itself. */
export function headOf(
  test: TestRead,
): Pick<
  EnduranceTest,
  'test' | 'protocol' | 'kind' | 'unit' | 'exposure' | 'stress' | 'stress_unit' | 'temperature_C'
> {
  const noted = test.rows.flatMap((r) => (r.temperature === null ? [] : [r.temperature]));
  return {
    test: test.test,
    protocol: test.protocol?.name ?? null,
    kind: test.kind,
    unit: test.unit,
    exposure: test.kind === 'passed' ? test.rows[0].amount : null,
    stress: test.stress,
    stress_unit: test.stressUnit,
    temperature_C: noted.length > 0 ? mean(noted) : null,
  };
}

export const piecesOf = (rows: readonly EnduranceRow[]): EnduranceCable['pieces'] =>
  rows.map((row) => ({
    specimen: row.specimen,
    amount: row.amount,
    outcome: row.failed ? 'failed' : 'survived',
    whole_at: row.failed && row.inspectedEvery !== null ? lifetimeOf(row).from : null,
  }));

/** A test in which each piece ran until its copper showed, or was ended. */
export function amountTest(test: TestRead, { cables, wallOf, level, seed }: TestContext): EnduranceTest {
  const all = livesByCable(test, cables);
  // References and controls are tested along but stand outside the order.
  const compared = all.filter(({ found }) => found.role === 'compared');
  const analysis =
    compared.length > 0
      ? analyseEndurance(
          compared.map((c) => c.lives),
          { level, seed },
        )
      : null;
  const shown = all.map((c): EnduranceCable => {
    const at = compared.indexOf(c);
    const own = at >= 0 ? null : analyseEndurance([c.lives], { level, seed });
    const of = at >= 0 ? analysis!.cables[at] : own!.cables[0];
    return amountCable(c, of, test.unit, level, at >= 0 ? (analysis!.band[at] ?? null) : null);
  });
  const names = compared.map(({ found }) => found.name);
  const pairs = analysis ? amountPairs(analysis, compared, level) : [];
  for (const c of shown) c.cannot_be_told_from = notParted(c.cable, pairs);
  const found: EnduranceTest = {
    ...headOf(test),
    cables: shown,
    logrank: analysis && logRankOf(analysis),
    common_shape: analysis?.commonShape ?? null,
    equal_shapes: analysis?.equalShapes ?? null,
    pairs,
    per_wall: perWallOf(test, compared, analysis, { level, wallOf }),
    sentence: analysis && names.length > 1 ? orderSentence(test.test, names, analysis) : '',
    notes: [],
    small_samples: '',
    how_we_know: [],
  };
  return {
    ...found,
    small_samples: smallSamples(found, analysis ? neighboursOf(analysis, compared) : new Set()),
    how_we_know: howWeKnow(found, level),
  };
}

function notParted(cable: string, pairs: readonly EndurancePair[]): string[] {
  return pairs.flatMap(({ a, b, parted }) => (parted ? [] : a === cable ? [b] : b === cable ? [a] : []));
}

function orderSentence(test: string, names: readonly string[], analysis: EnduranceAnalysis): string {
  const { band, order, pairs } = analysis;
  // Bands say it all where every parted pair lies across a cut.
  if (pairs.every(({ a, b, parted }) => parted === (band[a] !== band[b])))
    return lastingSentence(bandsOf(order.map((i) => ({ name: names[i], band: band[i]! }))), test);
  const shorter = (i: number) =>
    order.filter((j) =>
      pairs.some((p) => p.parted && (firstLastsLonger(p) ? p.a === i && p.b === j : p.b === i && p.a === j)),
    );
  return partedSentence(
    order.map((i) => ({ name: names[i], shorter: shorter(i).map((j) => names[j]) })),
    test,
  );
}

function logRankOf({ logRank, permutation }: EnduranceAnalysis): EnduranceTest['logrank'] {
  if (!logRank || !permutation) return null;
  return {
    chi2: logRank.chi2,
    dof: logRank.dof,
    p: logRank.p,
    p_exact: permutation.p,
    p_smallest: permutation.smallest,
    all_counted: permutation.exact,
  };
}

function amountCable(
  { found, rows }: CableLives,
  of: Lasting,
  unit: string,
  level: number,
  band: number | null,
): EnduranceCable {
  const median = shownMedian(of);
  const shown: EnduranceCable = {
    cable: found.cable,
    name: found.name,
    role: found.role,
    n: of.n,
    failed: of.failed,
    survived: of.survived,
    pieces: piecesOf(rows),
    median: { ...medianFound(median), level, how: median.how },
    lasts: lastsOf(median, unit, level),
    curve_median: medianFound(of.curveMedian),
    curve: of.curve.map((s) => ({
      amount: s.amount,
      at_risk: s.atRisk,
      failed: s.failed,
      survival: s.survival,
      interval: s.interval,
    })),
    weibull: of.weibull && {
      shape: of.weibull.shape,
      scale: of.weibull.scale,
      median: medianFound(of.weibull.median),
    },
    with_common_shape: of.withCommonShape && medianFound(of.withCommonShape),
    passed: null,
    band,
    cannot_be_told_from: [],
    text: '',
  };
  return { ...shown, text: cableText(shown, unit) };
}
