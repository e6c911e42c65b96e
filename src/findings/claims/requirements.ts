import { COPPER_RESISTIVITY } from '../../methods/metal/constants.ts';
import { awgArea, awgName } from '../../units/gauge.ts';
import type { SizeClaim } from '../../units/sizeText.ts';
import { iec60228Class5Maximum, iso6722Maximum, saeMinimumArea } from '../../units/standardSizes.ts';

/** What one reading of a label asks for, in SI units. */
export interface Requirement {
  reading: string;
  /** area: at least (m²); resistance: at most (Ω/m at 20 °C). */
  of: 'area' | 'resistance';
  required: number;
  /**
   * Resistance only: the most generous limit that some standard for flexible cable would allow. Between the two nothing is
   * said to fall short, because the label does not name the construction.
   */
  generous: number | null;
  nominal: number;
  tolerance: number;
  ofLabel: boolean;
  source: string;
  note: string;
}

/** Allowance on area of flexible AWG conductors: −2 %. ASTM B172, B173, B174, from memory. */
export const AREA_ALLOWANCE = -0.02;
/** Resistance of stranded over solid copper for concentric lay: +2 %. ASTM B8; NEC chapter 9 table 8 follows it. From memory. */
const CONCENTRIC_LAY = 0.02;
/** Rope-laid flexible cable is allowed up to 7 % more length in the strand, and 2 % on resistance. ASTM B172, from memory, uncertain. */
const FLEXIBLE_GENEROSITY = 1.07 * 1.02;

const AWG_SOURCE =
  'ASTM B258: d = 0.005 in · 92^((36 − n)/39); −2 % as ASTM B172 to B174 allow flexible cable (from memory)';

function awgAreaClaim(n: number, atLeast: boolean): Requirement {
  const nominal = awgArea(n);
  const tolerance = atLeast ? 0 : AREA_ALLOWANCE;
  return {
    reading: 'AWG by area',
    of: 'area',
    required: nominal * (1 + tolerance),
    generous: null,
    nominal,
    tolerance,
    ofLabel: true,
    source: AWG_SOURCE,
    note: atLeast ? 'The label says oversized, which claims at least the nominal area.' : '',
  };
}

function awgResistance(n: number): Requirement {
  const nominal = COPPER_RESISTIVITY / awgArea(n);
  const required = nominal * (1 + CONCENTRIC_LAY);
  return {
    reading: 'AWG by resistance',
    of: 'resistance',
    required,
    generous: nominal * FLEXIBLE_GENEROSITY,
    nominal,
    tolerance: CONCENTRIC_LAY,
    ofLabel: true,
    source: 'IEC 60028 resistivity over the ASTM B258 area, +2 % for stranding (ASTM B8, from memory)',
    note: 'Rope-laid flexible cable is allowed up to about 9 % more by its own standards (ASTM B172, from memory); between the two limits nothing is settled, because the label names no construction.',
  };
}

function saeSize(n: number, ofLabel: boolean): Requirement[] {
  const limit = saeMinimumArea(n);
  if (!limit) return [];
  return [
    {
      reading: 'SAE size',
      of: 'area',
      required: limit.value,
      generous: null,
      nominal: limit.value,
      tolerance: 0,
      ofLabel,
      source: `${limit.source.standard}, ${limit.source.known}`,
      note: `Road-vehicle battery cable of size ${awgName(n)} may be smaller than the AWG of the same name. This limit is ${limit.source.verified ? 'read in the standard' : 'from memory and unverified'}.`,
    },
  ];
}

/** Least copper that could still satisfy a resistance limit: no lay, 100 % IACS. */
function leastCopper(ohmsPerMetre: number): number {
  return COPPER_RESISTIVITY / ohmsPerMetre;
}

function metric(mm2: number, coated: boolean): Requirement[] {
  const nominal = mm2 * 1e-6;
  const list: Requirement[] = [];
  const iec = iec60228Class5Maximum(mm2, coated);
  if (iec)
    list.push({
      reading: 'IEC 60228',
      of: 'resistance',
      required: iec.value,
      generous: null,
      nominal: iec.value,
      tolerance: 0,
      ofLabel: true,
      source: `${iec.source.standard}, ${iec.source.table}`,
      note: `The nominal ${mm2} mm² is a name there, not a requirement: class 5 asks only for this resistance${coated ? ' (metal-coated strands)' : ''}, which ${(leastCopper(iec.value) * 1e6).toFixed(1)} mm² of copper can give.`,
    });
  const iso = iso6722Maximum(mm2, coated) ?? iso6722Maximum(mm2, false);
  if (iso)
    list.push({
      reading: 'ISO 19642',
      of: 'resistance',
      required: iso.value,
      generous: null,
      nominal: iso.value,
      tolerance: 0,
      ofLabel: true,
      source: `${iso.source.standard}, ${iso.source.known}`,
      note: `Road-vehicle cable, formerly ISO 6722; ${iso.source.verified ? 'read in the standard' : 'from memory'}. The nominal ${mm2} mm² is a name there, not a requirement.`,
    });
  if (list.length === 0)
    list.push({
      reading: 'mm² by area',
      of: 'area',
      required: nominal * (1 + AREA_ALLOWANCE),
      generous: null,
      nominal,
      tolerance: AREA_ALLOWANCE,
      ofLabel: true,
      source: 'The area as printed, less 2 %: common practice, no source',
      note: `No standard in the program lists ${mm2} mm², so only the printed area can be asked for.`,
    });
  return list;
}

/** Everything that a size text can mean, what the label itself says first. `coated`: the strands are tinned. */
export function requirementsOf(size: SizeClaim, coated: boolean): Requirement[] {
  const { system, awg, area, atLeast } = size;
  if (awg !== null && (system === 'AWG' || system === 'gauge')) {
    const named = system === 'AWG';
    return [awgAreaClaim(awg, atLeast), awgResistance(awg), ...saeSize(awg, !named)];
  }
  if (area === null) return [];
  if (system === 'mm2') return metric(Math.round(area * 1e6 * 1e6) / 1e6, coated);
  return [
    {
      ...awgAreaClaim(0, atLeast),
      reading: 'kcmil by area',
      nominal: area,
      required: area * (1 + (atLeast ? 0 : AREA_ALLOWANCE)),
    },
  ];
}

/** The copper that a label asks for, m²: what "copper held" is judged by, with the share of the nominal area it is. */
export function copperRequired(size: SizeClaim): { required: number; nominal: number; source: string } | null {
  const { area, system, atLeast } = size;
  if (area === null) return null;
  if (system !== 'mm2')
    return {
      required: area * (1 + (atLeast ? 0 : AREA_ALLOWANCE)),
      nominal: area,
      source: `The nominal area${atLeast ? '' : ', less the 2 % that flexible cable is allowed (ASTM B172 to B174, from memory)'}`,
    };
  const limits = metric(Math.round(area * 1e12) / 1e6, false).filter((r) => r.of === 'resistance');
  if (limits.length === 0)
    return {
      required: area * (1 + AREA_ALLOWANCE),
      nominal: area,
      source: 'The area as printed, less 2 %: common practice, no source',
    };
  const least = Math.min(...limits.map((r) => leastCopper(r.required)));
  return {
    required: least,
    nominal: area,
    source:
      'The least copper that could still give the highest resistance that IEC 60228 class 5 or ISO 19642 allows this size',
  };
}
