import type { CableFindings } from '../../findings/schema.ts';
import { countText, measuredText, percentText, plainText } from '../figures.ts';
import { metalKind } from '../metalKind.ts';

/**
 * The drawing of a cut face in one sentence with all its figures: what a screen reader says in its place. What was not
 * measured is said too, so that a listener knows as much as somebody who sees the crossed ruling.
 */
export function sectionDescription(cable: CableFindings): string {
  const colour = cable.jacket_colour === '' ? 'colour not recorded' : cable.jacket_colour;
  const parts = [
    `jacket ${colour}`,
    cable.outer_diameter === null
      ? 'outer diameter not measured'
      : `outer diameter ${measuredText(cable.outer_diameter)}`,
    cable.wall === null ? 'wall not measured' : `wall ${measuredText(cable.wall.mean)}`,
    cable.bundle_diameter === null ? 'bundle not measured' : `bundle ${measuredText(cable.bundle_diameter)}`,
    strands(cable),
    metal(cable),
    claim(cable),
  ];
  return `Cut face of ${cable.name || 'a cable without a name'}: ${parts.join('; ')}.`;
}

function strands({ strand_count: count, strand_diameter: diameter }: CableFindings): string {
  if (count === null && diameter === null) return 'strands not measured';
  if (count === null) return `strands of ${measuredText(diameter)}`;
  return diameter === null ? `${countText(count)} strands` : `${countText(count)} strands of ${measuredText(diameter)}`;
}

function metal(cable: CableFindings): string {
  if (cable.conductor_area === null)
    return cable.consistency?.recheck == null
      ? 'metal area not known: weigh it'
      : 'metal area not known: the readings contradict each other';
  const found = cable.metal_found ?? 'metal not told';
  const clad = metalKind(cable.metal_found) === 'copper-clad aluminium' && cable.copper_share !== null;
  return `metal area ${measuredText(cable.conductor_area)}, ${found}${clad ? `, copper ${percentText(cable.copper_share)} of it` : ''}`;
}

function claim({ label }: CableFindings): string {
  if (label.claimed_area_mm2 === null) return 'the label gives no area';
  return `the label claims ${plainText(label.claimed_area_mm2, 'mm2')}`;
}
