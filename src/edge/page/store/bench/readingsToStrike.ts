import type { Reading, Trial } from '../../../../trial/trial.ts';

/** So many of the latest readings of other pieces are offered too. */
const OF_OTHERS = 5;

/**
 * Readings that could be struck out, as they are offered: the one in question first, then every one of its piece and of the piece in
 * hand, then the latest few of all others; the newest first among each.
 *
 * @param first the reading in question; empty for none
 * @param pieces the piece in hand, and others to offer whole
 */
export function readingsToStrike(
  { readings }: Pick<Trial, 'readings'>,
  first: string,
  pieces: readonly string[],
): Reading[] {
  const counted = readings.filter((reading) => reading.standing === 'counted').reverse();
  const asked = counted.filter(({ reading }) => reading === first);
  const whole = [...new Set([...asked.map(({ specimen }) => specimen), ...pieces])];
  const of = whole.flatMap((specimen) => counted.filter((each) => each.specimen === specimen));
  const others = counted.filter(({ specimen }) => !whole.includes(specimen)).slice(0, OF_OTHERS);
  return [...new Set([...asked, ...of, ...others])];
}
