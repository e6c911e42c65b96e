/**
 * What invented strands are made of: phases that lie side by side along the strand, each with its own density,
 * conductivity and temperature coefficient. Nothing here is shared with the program's own table of metals.
 */
import type { Draws } from './random.ts';

/** `copper` stands for bare and tinned alike: what a label that says copper may hold. */
export type Family = 'copper' | 'copper-clad aluminium' | 'aluminium' | 'copper-clad steel';
export type MetalName = 'bare' | 'tinned' | 'clad aluminium' | 'aluminium' | 'clad steel';

interface Phase {
  /** Share of the strand's volume. */
  share: number;
  density: number; // kg/m³
  conductivity: number; // S/m at 20 °C
  temperatureCoefficient: number; // 1/K at 20 °C
}

export interface StrandMetal {
  name: MetalName;
  family: Family;
  phases: readonly Phase[];
}

/** 58 MS/m is 100 % of the annealed copper standard: IEC 60028 (1925). */
const STANDARD_COPPER = 58e6;
const COPPER_COEFFICIENT = 0.00393; // 1/K for 100 %; proportional to the conductivity, NBS Handbook 100
const ALUMINIUM_COEFFICIENT = 0.00403; // 1/K, IEC 60287-1-1, from memory
/** Tin: 7.29 g/cm³, 11.5 µΩ·cm, 0.0045 1/K: handbook figures, from memory. */
const TIN: Omit<Phase, 'share'> = { density: 7290, conductivity: 8.7e6, temperatureCoefficient: 0.0045 };

function copperPhase(draws: Draws, share: number, iacs: number): Phase {
  return {
    share,
    // Annealed standard 8.89, handbook figure for pure copper 8.93 to 8.96; drawn strands lie near the lower end.
    density: draws.between(8870, 8920),
    conductivity: iacs * STANDARD_COPPER,
    temperatureCoefficient: COPPER_COEFFICIENT * iacs,
  };
}

function aluminiumPhase(draws: Draws, share: number): Phase {
  return {
    share,
    density: draws.between(2698, 2708),
    conductivity: draws.between(0.6, 0.62) * STANDARD_COPPER,
    temperatureCoefficient: ALUMINIUM_COEFFICIENT,
  };
}

export function bareCopper(draws: Draws): StrandMetal {
  return { name: 'bare', family: 'copper', phases: [copperPhase(draws, 1, draws.between(0.99, 1.015))] };
}

/**
 * Tinned copper whose finished conductivity is `low` to `high` of the standard. Part of what is missing is tin that
 * takes copper's place, the rest is copper spoiled by tin that has gone into it.
 */
export function tinnedCopper(draws: Draws, low = 0.95, high = 1): StrandMetal {
  const finished = draws.between(low, high) * STANDARD_COPPER;
  const lost = Math.max(0, 1 - finished / STANDARD_COPPER);
  const tin = draws.between(0.4, 0.9) * lost;
  const copper = (finished - tin * TIN.conductivity) / (1 - tin) / STANDARD_COPPER;
  return { name: 'tinned', family: 'copper', phases: [copperPhase(draws, 1 - tin, copper), { ...TIN, share: tin }] };
}

/** Copper skin of `low` to `high` of the volume over an aluminium core. */
export function cladAluminium(draws: Draws, low = 0.1, high = 0.3): StrandMetal {
  const skin = draws.between(low, high);
  return {
    name: 'clad aluminium',
    family: 'copper-clad aluminium',
    phases: [copperPhase(draws, skin, draws.between(0.97, 1)), aluminiumPhase(draws, 1 - skin)],
  };
}

export function aluminium(draws: Draws): StrandMetal {
  return { name: 'aluminium', family: 'aluminium', phases: [aluminiumPhase(draws, 1)] };
}

/** Copper over steel in the two usual grades, 30 and 40 % of the standard's conductivity. */
export function cladSteel(draws: Draws): StrandMetal {
  const steel: Phase = {
    share: 0,
    density: draws.between(7840, 7880),
    conductivity: draws.between(5.5e6, 7e6), // 14 to 18 µΩ·cm
    temperatureCoefficient: 0.005,
  };
  const copper = copperPhase(draws, 0, draws.between(0.98, 1));
  const finished = draws.pick([0.3, 0.4]) * draws.between(0.98, 1.04) * STANDARD_COPPER;
  const skin = (finished - steel.conductivity) / (copper.conductivity - steel.conductivity);
  return {
    name: 'clad steel',
    family: 'copper-clad steel',
    phases: [
      { ...copper, share: skin },
      { ...steel, share: 1 - skin },
    ],
  };
}

/** A metal as a market might hold it; clad steel is rare at these sizes (common knowledge of the trade, no source). */
export function anyMetal(draws: Draws): StrandMetal {
  const kinds = [bareCopper, (d: Draws) => tinnedCopper(d), (d: Draws) => cladAluminium(d), aluminium, cladSteel];
  return draws.pick(kinds, [46, 25, 22, 6, 1])(draws);
}

/** kg/m³ */
export function densityOf(metal: StrandMetal): number {
  return metal.phases.reduce((sum, phase) => sum + phase.share * phase.density, 0);
}

/** Ω·m at a temperature in °C: the phases conduct side by side, each warming by its own coefficient. */
export function resistivityOf(metal: StrandMetal, celsius: number): number {
  const conductivity = metal.phases.reduce(
    (sum, phase) => sum + (phase.share * phase.conductivity) / (1 + phase.temperatureCoefficient * (celsius - 20)),
    0,
  );
  return 1 / conductivity;
}
