/** One pair judged: numbers of the two things, which was on the left, and which was preferred. */
export interface JudgedPair {
  left: number;
  right: number;
  result: 'left' | 'right' | 'same';
  /** Number of the judge. */
  judge: number;
}

/** Share of the pair that each side gets: 1, ½ or 0. */
export function leftShare(pair: JudgedPair): number {
  return pair.result === 'left' ? 1 : pair.result === 'right' ? 0 : 0.5;
}

/** @throws RangeError when a pair holds a thing beside itself or a number that is not one of 0 … count − 1. */
export function requirePairs(pairs: readonly JudgedPair[], count: number): void {
  for (const { left, right } of pairs) {
    if (left === right) throw new RangeError(`number ${left} was judged against itself`);
    for (const one of [left, right])
      if (!(Number.isInteger(one) && one >= 0 && one < count))
        throw new RangeError(`${one} is not one of ${count} things judged`);
  }
}
