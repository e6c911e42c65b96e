import type { StandardLimit, TableSource } from './standardSizes.ts';

/** How a flexible conductor is put together, as far as the standards' allowances for lay go. */
export type Stranding =
  | 'solid'
  | 'concentric'
  | 'compact concentric'
  | 'bunched'
  | 'rope of 7 bunches'
  | 'rope of 19 bunches'
  | 'rope of 7 ropes of 7 bunches'
  | 'rope of 19 ropes of 7 bunches'
  | 'rope of concentric members, 49 wires'
  | 'rope of concentric members, 133 wires'
  | 'rope of concentric members, 259 wires'
  | 'rope of concentric members, 427 wires'
  | 'rope of concentric members, more than 427 wires';

const B8: TableSource = {
  standard: 'ASTM B8',
  table: 'density, mass and resistance of concentric-lay conductors',
  known: 'from memory',
  verified: true,
};
const B496: TableSource = {
  standard: 'ASTM B496-04',
  table: 'mass and resistance of compact round concentric-lay conductors',
  known: 'read in reproductions of the table',
  verified: true,
};
const B174: TableSource = {
  standard: 'ASTM B174',
  table: 'bunch-stranded conductors',
  known: 'from memory',
  verified: true,
};
const B172: TableSource = {
  standard: 'ASTM B172',
  table: 'explanatory note: rope-lay conductors with bunch-stranded members',
  known: 'from memory, uncertain',
  verified: false,
};
const B173: TableSource = {
  standard: 'ASTM B173',
  table: 'explanatory note: rope-lay conductors with concentric-stranded members',
  known: 'from memory, uncertain',
  verified: false,
};
const BY_DEFINITION: TableSource = {
  standard: 'none',
  table: 'a solid wire has no lay',
  known: 'by definition',
  verified: true,
};

const INCREMENTS: Readonly<Record<Stranding, readonly [percent: number, source: TableSource]>> = {
  solid: [0, BY_DEFINITION],
  concentric: [2, B8],
  'compact concentric': [2, B496],
  bunched: [2, B174],
  'rope of 7 bunches': [4, B172],
  'rope of 19 bunches': [5, B172],
  'rope of 7 ropes of 7 bunches': [6, B172],
  'rope of 19 ropes of 7 bunches': [7, B172],
  'rope of concentric members, 49 wires': [3, B173],
  'rope of concentric members, 133 wires': [4, B173],
  'rope of concentric members, 259 wires': [4.5, B173],
  'rope of concentric members, 427 wires': [5, B173],
  'rope of concentric members, more than 427 wires': [6, B173],
};

/** Every stranding that has an increment here. */
export const STRANDINGS = Object.keys(INCREMENTS) as readonly Stranding[];

/**
 * The share by which a standard takes mass and resistance per length to grow through the strands' lay: 0.02 for 2 %. It is
 * added once to each. A convention of the standard, not what a given cable has: that is measured.
 */
export function layIncrement(stranding: Stranding): StandardLimit {
  const [percent, source] = INCREMENTS[stranding];
  return { value: percent / 100, source };
}
