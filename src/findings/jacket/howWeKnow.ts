import { formatPlain } from '../../units/digits.ts';
import type { EnduranceTest } from '../shapes/jacket.ts';

const chance = (p: number) => (p < 0.001 ? 'less than 0.001' : formatPlain(p, 2));

/** The second layer: what was computed, and what these numbers cannot show. */
export function howWeKnow(test: EnduranceTest, level: number): string[] {
  const said: string[] = [];
  const { logrank, common_shape, equal_shapes, pairs } = test;
  if (test.kind === 'passed') {
    said.push(`Shares carry exact binomial intervals (Clopper–Pearson, ${(100 * level).toFixed(0)} %).`);
    if (pairs.length > 0) said.push("Pairs are compared by Fisher's exact test with Holm's correction.");
    return [...said, ...outOfReach(test, level)];
  }
  said.push(
    'Survivors count as pieces that lasted at least so long (Kaplan–Meier; bands by log–log). A median has the Weibull shape of its own cable where at least three pieces failed, else the common one; intervals are profile likelihood calibrated for few pieces.',
  );
  if (logrank)
    said.push(
      `All cables taken together, ${logrank.all_counted ? 'counting every way' : 'sampling 100 000 ways'} to deal these pieces to cables, a difference as large has chance ${chance(logrank.p_exact)} (log-rank; the least that these pieces could give is ${chance(logrank.p_smallest)}).`,
    );
  if (common_shape !== null && pairs.length > 0)
    said.push(
      `Pairs are parted under one Weibull shape for all cables (${formatPlain(common_shape, 2)}), by likelihood ratio calibrated for few pieces, with Holm's correction over ${pairs.length} ${pairs.length === 1 ? 'pair' : 'pairs'}.`,
    );
  else if (pairs.length > 0)
    said.push("These pieces set no Weibull shape; pairs are parted by exact log-rank with Holm's correction alone.");
  if (equal_shapes)
    said.push(
      equal_shapes.p < 1 - level
        ? `One shape does not fit all cables (chance ${chance(equal_shapes.p)}): the order by medians is less sure than it looks.`
        : `Nothing speaks against one shape for all cables (chance ${chance(equal_shapes.p)}); so few pieces seldom could.`,
    );
  return [...said, ...outOfReach(test, level)];
}

/** Where no outcome at all could have reached the level in the exact test, that is said. */
function outOfReach({ pairs }: EnduranceTest, level: number): string[] {
  const least = pairs.flatMap((p) => (p.p_smallest === null ? [] : [p.p_smallest]));
  if (least.length === 0) return [];
  const limit = (1 - level) / pairs.length;
  const best = Math.min(...least);
  if (best <= limit) return [];
  return [
    `With so few pieces the exact test of a pair cannot come below ${chance(best)}, and ${pairs.length > 1 ? `among ${pairs.length} pairs ` : ''}it would have to come to ${chance(limit)}: by itself it can part nothing here.`,
  ];
}
