/**
 * Share of a bend that returns when it is let go: (bent − left) / bent, 1 for a spring and 0 for lead. Angles in one unit.
 *
 * Says nothing without the time that passed before reading and the temperature: jackets creep.
 *
 * @throws RangeError when the bend is not positive.
 */
export function springBackShare(bent: number, left: number): number {
  if (!(bent > 0)) throw new RangeError(`a bend to spring back from is positive, got ${bent}`);
  return (bent - left) / bent;
}
