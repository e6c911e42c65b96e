/** Invented cables: what is really inside, and what stands on the label. */
import { anyMetal, type Family, type StrandMetal } from './metals.ts';
import type { Draws } from './random.ts';

export interface TrueCable {
  id: string;
  claimedSize: string;
  claimedMetal: string;
  /** m², nominal for the claimed size. */
  claimedArea: number;
  /** m², all strands, square to each strand. */
  area: number;
  /** Strand length over cable length. */
  layFactor: number;
  metal: StrandMetal;
  strands: number;
  /** m; root of the mean square over the strands, so that strands · π/4 · d² is the area exactly. */
  strandDiameter: number;
  /** Copper all through, and not under the allowance of 2 % on the nominal area. */
  honest: boolean;
  /** Whether the lot's complication touches it. */
  concerned: boolean;
}

const SIZES = ['8', '6', '4', '2', '1/0', '2/0', '4/0'];
/** Strands as drawn, mm: 0.254 and 0.404 are 30 and 26 AWG, the others are metric. */
const STRAND_DIAMETERS = [0.2, 0.254, 0.287, 0.32, 0.404];
const HONEST_SHARE = 0.45;
/** AWG: 36 is 0.005 in, 4/0 is 0.46 in, 39 equal ratios between them (ASTM B258). */
const awgDiameter = (gauge: number) => 0.127e-3 * 92 ** ((36 - gauge) / 39);

/** Nominal area in m² of a size written `2` or `4/0`. */
export function nominalArea(size: string): number {
  const aughts = /^(\d)\/0$/.exec(size);
  const gauge = aughts ? 1 - Number(aughts[1]) : Number(size);
  return (Math.PI / 4) * awgDiameter(gauge) ** 2;
}

/** `odd` replaces the market's mixture of metals in the cables that a complication concerns. */
export function drawCable(
  draws: Draws,
  id: string,
  concerned: boolean,
  odd?: (draws: Draws) => StrandMetal,
): TrueCable {
  const size = draws.pick(SIZES);
  const claimedArea = nominalArea(size);
  const full = draws.unit() < HONEST_SHARE;
  const area = claimedArea * (full ? draws.between(0.98, 1.06) : 1 - draws.between(0, 0.35));
  const rope = draws.unit() < 0.2;
  const layFactor = rope ? draws.between(1.02, 1.07) : draws.between(1.005, 1.06);
  const metal = concerned && odd ? odd(draws) : anyMetal(draws);
  const strands = Math.round(area / ((Math.PI / 4) * (draws.pick(STRAND_DIAMETERS) * 1e-3) ** 2));
  const strandDiameter = Math.sqrt((4 * area) / (Math.PI * strands));
  return {
    id,
    claimedSize: `${size} AWG`,
    claimedMetal: metal.name === 'tinned' && draws.unit() < 0.5 ? 'tinned copper' : draws.pick(['copper', 'OFC']),
    claimedArea,
    area,
    layFactor,
    metal,
    strands,
    strandDiameter,
    honest: metal.family === 'copper' && area >= 0.98 * claimedArea,
    concerned,
  };
}

export function familyOf(cable: TrueCable): Family {
  return cable.metal.family;
}
