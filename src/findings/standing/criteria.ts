import type { ValueFunction } from '../../methods/decide/standing/valueFunction.ts';

/** A criterion that cables can be ordered by. */
export interface CriterionKind {
  id: string;
  name: string;
  unit: string;
  better: 'more' | 'less';
  shape: ValueFunction['shape'];
  /** Worst and best end where nobody stated them. `area`: mm² that most labels claim. Common practice, no source. */
  ends: (area: number) => [number, number];
  /** True when the ends follow the claimed size, so that they are better stated. */
  bySize: boolean;
}

/** What a label's size asks for: copper of 100 % IACS with 2 % of lay, mΩ/m for mm². IEC 60028:1925. */
const OHMS_OF_SIZE = 17.241 * 1.02;
/** Copper, g/m for mm²; insulated flexible cable weighs about 1.3 times its copper. Common practice, no source. */
const GRAMS_OF_SIZE = 8.96 * 1.3;
/** Bundles of flexible cable are about seven tenths metal. Common practice, no source. */
const METAL_OF_BUNDLE = 0.7;
/** A stiff and a soft cable of 1/0 AWG (53.5 mm²), N·m². Common practice, no source. */
const STIFF = 0.3;
const SOFT = 0.03;
const STIFFNESS_AREA = 53.5;
/** Amps for mm² to the power 0.6, a bundled cable in warm surroundings. Common practice, no source. */
const AMPS_OF_SIZE = 18;

const bundleOf = (area: number) => Math.sqrt((4 * area) / Math.PI / METAL_OF_BUNDLE);
const stiffness = (of: number) => (area: number) => of * (area / STIFFNESS_AREA) ** 1.5;

const kind = (
  id: string,
  name: string,
  unit: string,
  shape: ValueFunction['shape'],
  ends: CriterionKind['ends'],
  bySize: boolean,
): CriterionKind => {
  const [worst, best] = ends(STIFFNESS_AREA);
  return { id, name, unit, better: best > worst ? 'more' : 'less', shape, ends, bySize };
};

/** Every criterion but endurance tests and price, which have no ends of their own. */
export const CRITERIA: readonly CriterionKind[] = [
  kind('copper', 'Copper, of what the label claims', '1', 'flat', () => [0.7, 1], false),
  kind('area', 'Metal area', 'mm2', 'linear', (a) => [0.6 * a, 1.1 * a], true),
  kind(
    'resistance',
    'Resistance',
    'mohm/m',
    'linear',
    (a) => [OHMS_OF_SIZE / (0.6 * a), OHMS_OF_SIZE / (1.1 * a)],
    true,
  ),
  kind('mass', 'Weight', 'g/m', 'linear', (a) => [1.5 * GRAMS_OF_SIZE * a, 0.5 * GRAMS_OF_SIZE * a], true),
  kind('outer_diameter', 'Outer diameter', 'mm', 'linear', (a) => [1.6 * bundleOf(a), 1.1 * bundleOf(a)], true),
  kind('stiffness', 'Bending stiffness', 'N m2', 'linear', (a) => [stiffness(STIFF)(a), stiffness(SOFT)(a)], true),
  kind('judged', 'Ease of bending by hand', '1', 'linear', () => [-2, 2], false),
  kind('cold', 'Stiffening in the cold', '1', 'linear', () => [4, 1], false),
  kind('coil', 'Tightest coil', '1', 'linear', () => [15, 3], false),
  kind('wall', 'Wall of the jacket', 'mm', 'flat', () => [0.5, 2], false),
  kind('concentricity', 'Evenness of the wall', '1', 'flat', () => [0.5, 1], false),
  kind(
    'current',
    'Current it carries',
    'A',
    'linear',
    (a) => [0.6 * AMPS_OF_SIZE * a ** 0.6, 1.2 * AMPS_OF_SIZE * a ** 0.6],
    true,
  ),
];

/** Two significant digits: an end that is a suggestion needs no more. */
export const roundedEnd = (x: number): number => Number(x.toPrecision(2));

/** The area that most labels claim, mm²; of areas that are claimed as often the smallest; null when no label gives one. */
export function claimedMost(areas: readonly (number | null)[]): number | null {
  const counts = new Map<number, number>();
  for (const area of areas) if (area !== null) counts.set(area, (counts.get(area) ?? 0) + 1);
  const [most] = [...counts].sort((a, b) => b[1] - a[1] || a[0] - b[0]);
  return most ? most[0] : null;
}
