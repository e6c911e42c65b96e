/** Weights as whole shares of a hundred, the way they are shown, tried out and kept. */

const WHOLE = 100;

/** Shares by criterion; they add up to 100. */
export type Shares = ReadonlyMap<string, number>;

/**
 * Whole numbers that add up to 100 and stand in the proportion of the weights, by the largest remainders.
 *
 * @example wholeShares([1, 1, 1]) // 34, 33, 33
 */
export function wholeShares(weights: readonly number[]): number[] {
  const sum = weights.reduce((a, b) => a + b, 0);
  if (!(sum > 0)) return weights.map(() => 0);
  const exact = weights.map((w) => (WHOLE * w) / sum);
  const whole = exact.map(Math.floor);
  const missing = WHOLE - whole.reduce((a, b) => a + b, 0);
  const byRemainder = exact
    .map((x, at) => ({ at, rest: x - whole[at]! }))
    .sort((a, b) => b.rest - a.rest || a.at - b.at);
  for (const { at } of byRemainder.slice(0, missing)) whole[at]! += 1;
  return whole;
}

/**
 * What the shares become when some of them, moved together, come to `to`: they keep their proportions among themselves, and so do
 * all others. Others that have nothing at all share what is left evenly, those of `among` first.
 *
 * @param base shares from before the move began, so that going there and back changes nothing
 */
export function movedShares(base: Shares, moved: readonly string[], to: number, among: readonly string[] = []): Shares {
  const ids = [...base.keys()];
  const others = ids.filter((id) => !moved.includes(id));
  const target = others.length === 0 ? WHOLE : Math.min(WHOLE, Math.max(0, to));
  const exact = new Map([
    ...spread(base, moved, target),
    ...spread(
      base,
      others,
      WHOLE - target,
      among.filter((id) => others.includes(id)),
    ),
  ]);
  // The moved ones come to their sum exactly, whatever rounding does to the others.
  const own = scaledWhole(moved, exact, target);
  const rest = scaledWhole(others, exact, WHOLE - target);
  return new Map(ids.map((id) => [id, own.get(id) ?? rest.get(id) ?? 0]));
}

function spread(base: Shares, ids: readonly string[], sum: number, among: readonly string[] = []): [string, number][] {
  const now = ids.reduce((total, id) => total + (base.get(id) ?? 0), 0);
  if (now > 0) return ids.map((id) => [id, ((base.get(id) ?? 0) * sum) / now]);
  const even = among.length > 0 ? among : ids;
  return ids.map((id) => [id, even.includes(id) ? sum / even.length : 0]);
}

function scaledWhole(ids: readonly string[], exact: ReadonlyMap<string, number>, sum: number): Map<string, number> {
  const floor = ids.map((id) => Math.floor(exact.get(id)! + 1e-9));
  let missing = Math.round(sum - floor.reduce((a, b) => a + b, 0));
  const order = ids
    .map((id, at) => ({ at, rest: exact.get(id)! - floor[at]! }))
    .sort((a, b) => b.rest - a.rest || a.at - b.at);
  for (const { at } of order) {
    if (missing <= 0) break;
    floor[at]! += 1;
    missing -= 1;
  }
  return new Map(ids.map((id, at) => [id, floor[at]!]));
}
