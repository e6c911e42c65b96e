/** Findings held against the truth: what was covered, who was accused, what was missed. */
import type { CableFindings, Findings } from '../../src/findings/schema.ts';
import type { TrueCable } from './cables.ts';
import type { Lot } from './lot.ts';
import type { Subset } from './subsets.ts';

/** One cable of one lot as one subset of readings shows it. */
export interface Judged {
  lot: string;
  subset: Subset;
  cable: TrueCable;
  /** mm²; null where the readings gave no area. */
  interval: readonly [number, number] | null;
  /** True area inside the interval; null where there is no interval. */
  covered: boolean | null;
  /** Half the interval over its middle estimate. */
  halfWidth: number | null;
  /** Readings of the label that fall short. */
  short: readonly string[];
  /** Honest, and yet some claim about size or metal falls short. */
  accused: boolean;
  /** Short by 6 % or more, and no claim about size falls short; null where the cable is not that short. */
  missed: boolean | null;
  /** Short by 6 % or more, or not copper, and "copper held" does not fall short; null for all other cables. */
  copperMissed: boolean | null;
  /** The likeliest family of metal is the true one; null where no probabilities were given. */
  metalRight: boolean | null;
  /** The metal that the findings name, null when they leave it open. */
  metalNamed: string | null;
  /** Readings disagree with one another (χ² of consistency below 1 %), or two pieces of the cable do. */
  flagged: boolean;
  /** What the findings ask to be taken again. */
  recheck: string | null;
}

const FAR_SHORT = 0.94;
const FLAG_BELOW = 0.01;
const ABOUT_SIZE = ['copper held', 'AWG by area'];
const ABOUT_LABEL = [...ABOUT_SIZE, 'metal'];

export function judgeLot(lot: Lot, subset: Subset, findings: Findings): Judged[] {
  return lot.cables.map((cable) => {
    const found = findings.cables.find((each) => each.cable === cable.id);
    if (!found) throw new Error(`${lot.name}: no finding for ${cable.id}`);
    const piecesDisagree = findings.warnings.some(
      (warning) => warning.code === 'specimens-disagree' && warning.cable === cable.id,
    );
    return judgeCable(lot.name, subset, cable, found, piecesDisagree);
  });
}

function judgeCable(
  lot: string,
  subset: Subset,
  cable: TrueCable,
  found: CableFindings,
  piecesDisagree: boolean,
): Judged {
  const area = found.conductor_area;
  const trueArea = cable.area * 1e6;
  const short = found.claims.filter((claim) => claim.outcome === 'falls short').map((claim) => claim.reading);
  const farShort = cable.area <= FAR_SHORT * cable.claimedArea;
  const isCopper = cable.metal.family === 'copper';
  return {
    lot,
    subset,
    cable,
    interval: area?.interval ?? null,
    covered: area ? area.interval[0] <= trueArea && trueArea <= area.interval[1] : null,
    halfWidth: area ? (area.interval[1] - area.interval[0]) / 2 / area.value : null,
    short,
    accused: cable.honest && ABOUT_LABEL.some((reading) => short.includes(reading)),
    missed: farShort ? !ABOUT_SIZE.some((reading) => short.includes(reading)) : null,
    copperMissed: farShort || !isCopper ? !short.includes('copper held') : null,
    metalRight: likeliestFamily(found.metal, cable),
    metalNamed: found.metal_found,
    flagged: piecesDisagree || (found.consistency !== null && found.consistency.p < FLAG_BELOW),
    recheck: piecesDisagree ? 'conductor_mass of the pieces' : (found.consistency?.recheck ?? null),
  };
}

/** Tin on the outside does not make another family; the names are those of the findings. */
const FAMILIES: Readonly<Record<string, string>> = {
  'tinned copper': 'copper',
  'tinned clad aluminium': 'copper-clad aluminium',
};

function likeliestFamily(metal: Readonly<Record<string, number>>, cable: TrueCable): boolean | null {
  const families = new Map<string, number>();
  for (const [name, probability] of Object.entries(metal)) {
    const family = FAMILIES[name] ?? name;
    families.set(family, (families.get(family) ?? 0) + probability);
  }
  if (families.size === 0) return null;
  const [likeliest] = [...families].reduce((best, each) => (each[1] > best[1] ? each : best));
  return likeliest === cable.metal.family;
}
