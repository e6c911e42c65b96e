import type { CableFindings, Measured } from '../../../../findings/schema.ts';

/** The figures that the table has no column for, with the words that people know them by; unknown ones are left out. */
export function figuresOfThePiece(cable: CableFindings): [string, Measured][] {
  const all: [string, Measured | null][] = [
    ['Weight of the conductor', cable.mass_per_metre],
    ['Mass resistivity', cable.mass_resistivity],
    ['Copper’s share of the metal', cable.metal_found === 'copper-clad aluminium' ? cable.copper_share : null],
    ['Strand length over cable length', cable.lay_factor],
    ['Strands', cable.strand_count],
    ['Strand diameter', cable.strand_diameter],
    ['Bundle diameter', cable.bundle_diameter],
    ['Outer diameter', cable.outer_diameter],
    ['Least wall', cable.wall?.least ?? null],
    ['Least over mean wall', cable.wall?.concentricity ?? null],
  ];
  return all.filter((row): row is [string, Measured] => row[1] !== null);
}
