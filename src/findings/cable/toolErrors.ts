import type { CableAssay, JointAssay } from '../../methods/assay/joint.ts';
import { errorsThatMakeCopper, errorsThatReach, type NeededError } from '../../methods/assay/toolError.ts';
import { MASS_RESISTIVITY_OF_COPPER } from '../../methods/metal/constants.ts';
import type { Claim, ToolError } from '../schema.ts';

/** How SI units of shared inputs are shown. */
const SHOWN: Readonly<Record<string, { unit: string; scale: number }>> = {
  kg: { unit: 'g', scale: 1e3 },
  m: { unit: 'mm', scale: 1e3 },
  ohm: { unit: 'mΩ', scale: 1e3 },
  K: { unit: '°C', scale: 1 },
  '1': { unit: '%', scale: 100 },
};

/** Claims on the area, in the order in which people ask about them. */
const ON_AREA = ['copper held', 'AWG by area', 'kcmil by area', 'mm² by area', 'SAE size'];
/** So many instruments are named; the rest would need larger errors still. */
const NAMED = 4;

/** Two digits of where an instrument would have to stand. */
function shownNumber(x: number): string {
  return Math.abs(x) >= 100 ? Math.round(x).toString() : Number(x.toPrecision(2)).toString();
}

function toolName(e: NeededError): string {
  return e.label.replace(/, (its limit|its percentage|as checked)$/, '');
}

function shownError(e: NeededError) {
  const { unit, scale } = SHOWN[e.unit] ?? { unit: e.unit, scale: 1 };
  const needed = Math.abs(e.needed) * scale;
  const limit = e.limit * scale;
  return { unit, needed, limit, way: e.needed > 0 ? 'too high' : 'too low', times: needed / limit };
}

/** One instrument's needed error in words; `aim` says what it would bring about. */
function toolError(claim: Claim, e: NeededError, aim: string): ToolError {
  const { unit, needed, limit, way, times } = shownError(e);
  return {
    claim: claim.reading,
    input: e.input,
    needed,
    limit,
    unit,
    text: `${toolName(e)} would have to read ${shownNumber(needed)} ${unit} ${way} (its limit is ${shownNumber(limit)} ${unit}, so ${shownNumber(times)} times that) ${aim}.`,
  };
}

/** Least mass resistivity that copper can show, whatever its lay: the figure of ASTM B193, less 1 %. */
const COPPER_PRODUCT = 0.99 * MASS_RESISTIVITY_OF_COPPER;

/** A tool has a zero and a percentage; the one that would have to be wrong by fewer limits is named. */
function leastPerTool(errors: readonly NeededError[]): NeededError[] {
  const seen = new Set<string>();
  return errors.filter((e) => {
    const name = toolName(e);
    if (seen.has(name)) return false;
    seen.add(name);
    return true;
  });
}

/** "How wrong would we have to be?" for the first settled claim on the area; empty when nothing is settled. */
export function toolErrorsOf(joint: JointAssay, assay: CableAssay, claims: readonly Claim[]): ToolError[] {
  const metal = claims.find((c) => c.reading === 'metal');
  if (metal?.outcome === 'falls short' && metal.asks.includes('copper'))
    return leastPerTool(errorsThatMakeCopper(joint, assay, COPPER_PRODUCT))
      .slice(0, NAMED)
      .map((e) => toolError(metal, e, 'for this metal to be taken for copper'));
  const claim = ON_AREA.map((reading) => claims.find((c) => c.reading === reading)).find(
    (c) => c?.of_label && c.required && (c.outcome === 'meets' || c.outcome === 'falls short'),
  );
  if (!claim?.required) return [];
  const aim =
    claim.outcome === 'falls short' ? 'for this piece to reach the limit' : 'for this piece to fall to the limit';
  return leastPerTool(errorsThatReach(joint, assay, claim.required * 1e-6))
    .slice(0, NAMED)
    .map((e) => toolError(claim, e, aim));
}
