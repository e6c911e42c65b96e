import { type Known, sectionShares } from '../../methods/jacket/shares.ts';
import { measuredFromU, withinLimits } from '../measured.ts';
import type { CableFindings, Measured } from '../schema.ts';
import type { JacketCable } from '../shapes/jacket.ts';

/**
 * Shares of the cut face, each with its interval cut at nothing and at the whole. Where the metal does not fit within the jacket by
 * more than the readings' own doubt, one of them is wrong and no share is given; where it only just does not, there is no air.
 *
 * @param area m² @param outer m @param wall m
 */
export function faceShares(
  area: Known | null,
  outer: Known | null,
  wall: Known | null,
  found: CableFindings,
  level: number,
): Pick<JacketCable, 'shares' | 'shares_doubt'> {
  if (!area || !outer || !wall || outer.value <= 2 * wall.value) return { shares: null, shares_doubt: '' };
  const shares = sectionShares(area, outer, wall);
  const condition = found.conductor_area?.condition;
  const measured = (k: Known, from: string[], under?: string): Measured => {
    const value = Math.max(0, k.value);
    const made = measuredFromU(k.value, k.u, {
      scale: 1,
      unit: '1',
      level,
      from,
      ...(under ? { condition: under } : {}),
    });
    return withinLimits({ ...made, value }, 0, 1);
  };
  const air = measuredFromU(shares.air.value, shares.air.u, { scale: 1, unit: '1', level, from: [] });
  if (air.interval[1] < 0)
    return {
      shares: null,
      shares_doubt:
        'Metal and jacket together take up more than the whole face: diameter, wall or area is wrong. Read the outer diameter with a paper strip.',
    };
  // Without air the two fill the face between them.
  const whole = shares.air.value < 0 ? shares.metal.value + shares.jacket.value : 1;
  const filled = ({ value, u }: Known): Known => ({ value: value / whole, u: u / whole });
  return {
    shares: {
      metal: measured(filled(shares.metal), ['conductor_area', 'outer_diameter'], condition),
      air: measured(shares.air, ['conductor_area', 'outer_diameter', ...(found.wall?.mean.from ?? [])], condition),
      jacket: measured(filled(shares.jacket), ['outer_diameter', ...(found.wall?.mean.from ?? [])]),
    },
    shares_doubt: '',
  };
}
