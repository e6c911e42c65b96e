/** Which readings of a lot the program is shown: a tester rarely takes all. */
import type { PackageTables } from './tables.ts';

export type SubsetName =
  | 'mass only'
  | 'mass + ohms'
  | 'mass + strands'
  | 'all'
  | 'ohms + strands'
  | 'mass + ohms + eye';

const MASS = ['conductor_mass', 'conductor_length'];
const OHMS = ['resistance'];
const STRANDS = ['strand_count', 'strand_diameter'];

export interface Subset {
  name: SubsetName;
  quantities: readonly string[];
  eye: boolean;
}

export const SUBSETS: readonly Subset[] = [
  { name: 'mass only', quantities: MASS, eye: false },
  { name: 'mass + ohms', quantities: [...MASS, ...OHMS], eye: false },
  { name: 'mass + strands', quantities: [...MASS, ...STRANDS], eye: false },
  { name: 'all', quantities: [...MASS, ...OHMS, ...STRANDS], eye: false },
  { name: 'ohms + strands', quantities: [...OHMS, ...STRANDS], eye: false },
  { name: 'mass + ohms + eye', quantities: [...MASS, ...OHMS], eye: true },
];

export function hasOhms(subset: Subset): boolean {
  return subset.quantities.includes('resistance');
}

export function hasStrands(subset: Subset): boolean {
  return subset.quantities.includes('strand_count');
}

export function hasMass(subset: Subset): boolean {
  return subset.quantities.includes('conductor_mass');
}

/** The tables of a lot with only the readings of the subset. */
export function shownOf(tables: PackageTables, subset: Subset): PackageTables {
  return {
    ...tables,
    evidence: subset.eye ? (tables.evidence ?? []) : [],
    readings: (tables.readings ?? []).filter((reading) => subset.quantities.includes(reading.quantity!)),
  };
}
