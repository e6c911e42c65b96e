import { conductorMetal, USUAL_JACKET } from '../../methods/current/materials.ts';
import type { HeatedCable } from '../../methods/current/thermal/run.ts';
import { bundleDiameter } from '../../methods/decide/conductorSize.ts';
import type { CableFindings } from '../schema.ts';

/** A cable as heat sees it, or what is missing for that, in words. */
export type Heated = { cable: HeatedCable; missing: null } | { cable: null; missing: string };

const SQUARE_MILLIMETRE = 1e-6;
const MILLIMETRE = 1e-3;
const MILLIOHM = 1e-3;

/** A cable's own resistance, metal and size, from what was found of it; never from its label. */
export function heatedCableOf(found: CableFindings): Heated {
  const { resistance_20C, conductor_area, outer_diameter, bundle_diameter, lay_factor, metal_found } = found;
  const lacks = (what: string): Heated => ({ cable: null, missing: what });
  if (resistance_20C === null) return lacks('its resistance was not read');
  if (outer_diameter === null) return lacks('its outer diameter was not measured');
  if (conductor_area === null) return lacks('its metal area is not known');
  const area = conductor_area.value * SQUARE_MILLIMETRE;
  const outerDiameter = outer_diameter.value * MILLIMETRE;
  const bundle = bundle_diameter ? bundle_diameter.value * MILLIMETRE : bundleDiameter(area);
  if (!(bundle < outerDiameter)) return lacks('its outer diameter does not go round its strands: measure both again');
  return {
    cable: {
      metal: conductorMetal(metal_found),
      resistance20: resistance_20C.value * MILLIOHM,
      metalVolume: area * (lay_factor?.value ?? 1),
      bundleDiameter: bundle,
      outerDiameter,
      jacket: USUAL_JACKET,
    },
    missing: null,
  };
}
