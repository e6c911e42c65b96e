import type { CableAssay, JointAssay } from '../../methods/assay/joint.ts';
import { errorsThatReach, type NeededError } from '../../methods/assay/toolError.ts';
import type { Claim, ToolError } from '../schema.ts';

/** How SI units of shared inputs are shown. */
const SHOWN: Readonly<Record<string, { unit: string; scale: number }>> = {
  kg: { unit: 'g', scale: 1e3 },
  m: { unit: 'mm', scale: 1e3 },
  ohm: { unit: 'mΩ', scale: 1e3 },
  K: { unit: 'K', scale: 1 },
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

function toolError(claim: Claim, e: NeededError): ToolError {
  const { unit, scale } = SHOWN[e.unit] ?? { unit: e.unit, scale: 1 };
  const needed = Math.abs(e.needed) * scale;
  const limit = e.limit * scale;
  const way = e.needed > 0 ? 'too high' : 'too low';
  const name = e.label.replace(/, its (limit|percentage)$/, '');
  const times = needed / limit;
  const aim =
    claim.outcome === 'falls short' ? 'for this piece to reach the limit' : 'for this piece to fall to the limit';
  return {
    claim: claim.reading,
    input: e.input,
    needed,
    limit,
    unit,
    text: `${name} would have to read ${shownNumber(needed)} ${unit} ${way} (its limit is ${shownNumber(limit)} ${unit}, so ${shownNumber(times)} times that) ${aim}.`,
  };
}

/** "How wrong would we have to be?" for the first settled claim on the area; empty when nothing is settled. */
export function toolErrorsOf(joint: JointAssay, assay: CableAssay, claims: readonly Claim[]): ToolError[] {
  const claim = ON_AREA.map((reading) => claims.find((c) => c.reading === reading)).find(
    (c) => c?.required && (c.outcome === 'meets' || c.outcome === 'falls short'),
  );
  if (!claim?.required) return [];
  return errorsThatReach(joint, assay, claim.required * 1e-6)
    .slice(0, NAMED)
    .map((e) => toolError(claim, e));
}
