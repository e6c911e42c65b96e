import { analysePassing } from '../../methods/jacket/endurance/passing.ts';
import { bandsOf, listed } from '../flex/words.ts';
import type { EnduranceCable, EndurancePair, EnduranceTest } from '../shapes/jacket.ts';
import { headOf, livesByCable, piecesOf, type TestContext } from './enduranceTest.ts';
import { howWeKnow } from './howWeKnow.ts';
import type { TestRead } from './readEndurance.ts';
import { smallSamples } from './smallSamples.ts';

/** A test that each piece came through, or not, after one exposure. */
export function passedTest(test: TestRead, { cables, level }: TestContext): EnduranceTest {
  const all = livesByCable(test, cables);
  const counts = all.map(({ rows }) => ({ n: rows.length, passed: rows.filter((r) => !r.failed).length }));
  const compared = all.flatMap(({ found }, i) => (found.role === 'compared' ? [i] : []));
  const alone = analysePassing(counts, level);
  const analysis = analysePassing(
    compared.map((i) => counts[i]),
    level,
  );
  const cable = (i: number) => all[compared[i]].found;
  const pairs: EndurancePair[] = analysis.pairs.map((p) => ({
    a: cable(p.a).cable,
    b: cable(p.b).cable,
    ratio: null,
    interval: [null, null],
    p: null,
    p_holm: null,
    p_exact: p.p,
    p_exact_holm: p.pHolm,
    p_smallest: p.smallest,
    parted: p.parted,
    pieces_to_part: null,
    why_no_pieces: p.parted
      ? ''
      : 'How many pieces would part them is not worked out for a test that is passed or not.',
    text: p.parted
      ? `${cable(p.a).name} and ${cable(p.b).name} are parted.`
      : `${cable(p.a).name} and ${cable(p.b).name} are not parted.`,
  }));
  const shown = all.map(({ found, rows }, i): EnduranceCable => {
    const { n, passed, interval } = alone.cables[i];
    const at = compared.indexOf(i);
    return {
      cable: found.cable,
      name: found.name,
      role: found.role,
      n,
      failed: n - passed,
      survived: passed,
      pieces: piecesOf(rows),
      median: null,
      lasts: null,
      curve_median: null,
      curve: [],
      weibull: null,
      with_common_shape: null,
      passed: { share: passed / n, interval },
      band: at >= 0 ? analysis.band[at] : null,
      cannot_be_told_from: pairs.flatMap((p) =>
        p.parted ? [] : p.a === found.cable ? [p.b] : p.b === found.cable ? [p.a] : [],
      ),
      text: `${passed} of ${n} came through; of many such pieces between ${share(interval[0])} and ${share(interval[1])} would.`,
    };
  });
  const found: EnduranceTest = {
    ...headOf(test),
    cables: shown,
    logrank: null,
    common_shape: null,
    equal_shapes: null,
    pairs,
    per_wall: null,
    sentence: sentenceOf(
      test.test,
      analysis.order.map((i) => ({ name: cable(i).name, band: analysis.band[i], ...analysis.cables[i] })),
    ),
    notes: [],
    small_samples: '',
    how_we_know: [],
  };
  return { ...found, small_samples: smallSamples(found), how_we_know: howWeKnow(found, level) };
}

const share = (x: number) => `${(100 * x).toFixed(0)} %`;

function sentenceOf(
  test: string,
  order: readonly { name: string; band: number | null; n: number; passed: number }[],
): string {
  if (order.length === 0) return '';
  const did = listed(order.map(({ name, n, passed }) => `${passed} of ${n} of ${name}`));
  if (order.length < 2) return `${did} came through the ${test} test.`;
  const bands = bandsOf(order.map(({ name, band }) => ({ name, band: band ?? 1 })));
  const parted = bands.length > 1 ? '' : ' So few pieces do not part the cables.';
  return `${did} came through the ${test} test.${parted}`;
}
