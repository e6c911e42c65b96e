import {
  ALUMINIUM_ALPHA,
  ALUMINIUM_DENSITY,
  ALUMINIUM_RESISTIVITY,
  CLAD_STEEL_ALPHA,
  COPPER_ALPHA,
  COPPER_DENSITY,
  COPPER_RESISTIVITY,
  COPPER_USUAL_CONDUCTIVITY,
} from './constants.ts';

/** The metals that a conductor may turn out to be, in the words that are shown. */
export const METALS = [
  'copper',
  'tinned copper',
  'copper-clad aluminium',
  'tinned clad aluminium',
  'aluminium',
  'copper-clad steel',
  'mixed',
  'other',
] as const;
export type Metal = (typeof METALS)[number];

/** Metals that honour the claim "copper": the skin of tin on each strand is not counted against it. */
export const COPPER_FAMILY: readonly Metal[] = ['copper', 'tinned copper'];

/** One precise supposition about the metal: what its density and resistivity would be, and how surely. */
export interface MetalHypothesis {
  metal: Metal;
  /** Plain words for what is special: '12 % copper by volume'. */
  detail: string;
  /** Starting odds before anything is read; the same for every maker. They sum to 1 over the list. */
  prior: number;
  /** Natural log of density in kg/m³: mean and standard deviation. */
  lnDensity: { mean: number; sd: number };
  /** Natural log of resistivity at 20 °C in Ω·m. */
  lnResistivity: { mean: number; sd: number };
  /** Temperature coefficient of resistance referred to 20 °C, 1/K. */
  alpha: number;
  /** Copper's share of the metal's volume. */
  copperShare: number;
  /** True when the constants of copper that all such cables share enter this metal. */
  sharesCopperConstants: boolean;
}

/**
 * Starting odds of each metal. They matter only while no resistance was read; they are printed with the findings, may be
 * changed, and never depend on the maker. Common practice, no source.
 */
export const STARTING_ODDS: Readonly<Record<Metal, number>> = {
  copper: 0.45,
  'tinned copper': 0.27,
  'copper-clad aluminium': 0.2,
  'tinned clad aluminium': 0.01,
  aluminium: 0.05,
  'copper-clad steel': 0.005,
  mixed: 0.01,
  other: 0.005,
};

/** Conductivities of tinned wire relative to IACS, with weights. ASTM B33-04 Table 2 allows down to 93.15 % for strands under 0.28 mm. */
const TIN_CLASSES: readonly [number, number][] = [
  [0.935, 0.5],
  [0.945, 0.7],
  [0.955, 1],
  [0.965, 1],
  [0.975, 1],
  [0.985, 1],
  [0.995, 0.6],
];

/** Volume shares of copper in clad aluminium, with weights: ASTM B566 classes are 10 and 15 %, the trade sells others too. */
const CLAD_CLASSES: readonly [number, number][] = [
  [0.08, 0.5],
  [0.1, 2],
  [0.12, 1.5],
  [0.15, 2],
  [0.18, 1],
  [0.22, 0.7],
  [0.26, 0.5],
  [0.3, 0.4],
];

/** Shares of copper strands where copper and clad strands lie in one bundle. */
const MIXED_CLASSES: readonly number[] = [0.25, 0.5, 0.75];

/** Share of copper in the clad strands of a mixed bundle. */
const MIXED_CLAD_SHARE = 0.15;

/**
 * Density lost to tin per unit of conductivity lost: a tin skin that costs c of the conductivity takes about 0.45·c of the
 * section, and tin (7290 kg/m³) is 1600 kg/m³ lighter than copper.
 */
const DENSITY_LOST_PER_CONDUCTIVITY_LOST = 1600 * 0.45;

const ln = Math.log;

function cladDensity(share: number): number {
  return share * COPPER_DENSITY + (1 - share) * ALUMINIUM_DENSITY;
}

/** Copper skin and aluminium core conduct side by side; the drawn core conducts about 1.5 % worse than soft aluminium. */
function cladResistivity(share: number): number {
  return 1 / (share / COPPER_RESISTIVITY + ((1 - share) / ALUMINIUM_RESISTIVITY) * 0.985);
}

function weighted<T>(classes: readonly [T, number][]): [T, number][] {
  const sum = classes.reduce((total, [, weight]) => total + weight, 0);
  return classes.map(([value, weight]) => [value, weight / sum]);
}

function copper(): MetalHypothesis {
  return {
    metal: 'copper',
    detail: 'bare copper',
    prior: STARTING_ODDS.copper,
    lnDensity: { mean: ln(COPPER_DENSITY), sd: 0.0025 },
    lnResistivity: { mean: ln(COPPER_RESISTIVITY / COPPER_USUAL_CONDUCTIVITY), sd: 0.006 },
    alpha: COPPER_ALPHA,
    copperShare: 1,
    sharesCopperConstants: true,
  };
}

function tinned(): MetalHypothesis[] {
  return weighted(TIN_CLASSES).map(([conductivity, weight]) => ({
    metal: 'tinned copper',
    detail: `tinned, ${(100 * conductivity).toFixed(1)} % IACS`,
    prior: STARTING_ODDS['tinned copper'] * weight,
    lnDensity: { mean: ln(COPPER_DENSITY - DENSITY_LOST_PER_CONDUCTIVITY_LOST * (1 - conductivity)), sd: 0.0025 },
    lnResistivity: { mean: ln(COPPER_RESISTIVITY / conductivity), sd: 0.004 },
    alpha: COPPER_ALPHA * conductivity,
    copperShare: 1,
    sharesCopperConstants: true,
  }));
}

function clad(metal: 'copper-clad aluminium' | 'tinned clad aluminium'): MetalHypothesis[] {
  return weighted(CLAD_CLASSES).map(([share, weight]) => ({
    metal,
    detail: `${Math.round(100 * share)} % copper by volume`,
    prior: STARTING_ODDS[metal] * weight,
    lnDensity: { mean: ln(cladDensity(share)), sd: 0.025 },
    lnResistivity: { mean: ln(cladResistivity(share)), sd: 0.012 },
    alpha: ALUMINIUM_ALPHA,
    copperShare: share,
    sharesCopperConstants: false,
  }));
}

function aluminium(): MetalHypothesis {
  return {
    metal: 'aluminium',
    detail: 'plain aluminium',
    prior: STARTING_ODDS.aluminium,
    lnDensity: { mean: ln(ALUMINIUM_DENSITY), sd: 0.004 },
    lnResistivity: { mean: ln(2.83e-8), sd: 0.012 },
    alpha: ALUMINIUM_ALPHA,
    copperShare: 0,
    sharesCopperConstants: false,
  };
}

/** 30 and 40 % IACS grades: ASTM B910/B227, densities about 8.15 and 8.24 g/cm³, unverified. */
function cladSteel(): MetalHypothesis[] {
  return [0.3, 0.4].map((conductivity) => ({
    metal: 'copper-clad steel',
    detail: `copper on steel, ${Math.round(100 * conductivity)} % IACS`,
    prior: STARTING_ODDS['copper-clad steel'] / 2,
    lnDensity: { mean: ln(8200), sd: 0.01 },
    lnResistivity: { mean: ln(COPPER_RESISTIVITY / conductivity), sd: 0.03 },
    alpha: CLAD_STEEL_ALPHA,
    copperShare: conductivity === 0.3 ? 0.22 : 0.32,
    sharesCopperConstants: false,
  }));
}

function mixed(): MetalHypothesis[] {
  return MIXED_CLASSES.map((copperStrands) => {
    const density = copperStrands * COPPER_DENSITY + (1 - copperStrands) * cladDensity(MIXED_CLAD_SHARE);
    const conductivity = copperStrands / COPPER_RESISTIVITY + (1 - copperStrands) / cladResistivity(MIXED_CLAD_SHARE);
    return {
      metal: 'mixed',
      detail: `${Math.round(100 * copperStrands)} % copper strands among clad ones`,
      prior: STARTING_ODDS.mixed / MIXED_CLASSES.length,
      lnDensity: { mean: ln(density), sd: 0.05 },
      lnResistivity: { mean: ln(1 / conductivity), sd: 0.04 },
      alpha: COPPER_ALPHA,
      copperShare: copperStrands + (1 - copperStrands) * MIXED_CLAD_SHARE,
      sharesCopperConstants: false,
    };
  });
}

/** Wide on purpose, and with little prior weight: it takes what no named metal explains, and must not swallow wrong readings. */
function other(): MetalHypothesis {
  return {
    metal: 'other',
    detail: 'none of the named metals',
    prior: STARTING_ODDS.other,
    lnDensity: { mean: ln(6500), sd: 0.5 },
    lnResistivity: { mean: ln(3e-8), sd: 0.7 },
    alpha: COPPER_ALPHA,
    copperShare: 0,
    sharesCopperConstants: false,
  };
}

/**
 * Every supposition about the metal that the assay weighs, with starting odds that sum to 1.
 *
 * @param odds changes to {@link STARTING_ODDS}; they are scaled so that all sum to 1.
 */
export function metalHypotheses(odds: Partial<Record<Metal, number>> = {}): MetalHypothesis[] {
  const list = [
    copper(),
    ...tinned(),
    ...clad('copper-clad aluminium'),
    ...clad('tinned clad aluminium'),
    aluminium(),
    ...cladSteel(),
    ...mixed(),
    other(),
  ].map((h) => ({ ...h, prior: h.prior * ((odds[h.metal] ?? STARTING_ODDS[h.metal]) / STARTING_ODDS[h.metal]) }));
  const sum = list.reduce((total, h) => total + h.prior, 0);
  return list.map((h) => ({ ...h, prior: h.prior / sum }));
}

/** The one supposition for a control piece: plain solid copper building wire, which has no lay and no tin. */
export function controlHypothesis(): MetalHypothesis {
  return { ...copper(), prior: 1 };
}
