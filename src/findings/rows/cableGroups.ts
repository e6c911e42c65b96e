import type { Group } from './groups.ts';

/** The groups of one cable, found by quantity and by specimen. */
export class CableGroups {
  readonly all: readonly Group[];

  constructor(groups: readonly Group[]) {
    this.all = groups;
  }

  /** Every group of a quantity, over all specimens. */
  of(quantity: string): Group[] {
    return this.all.filter((g) => g.quantity === quantity);
  }

  /** The best group of a quantity on one specimen: the one whose tool is the most accurate for it. */
  on(specimen: string, quantity: string, position = ''): Group | null {
    const found = this.all.filter((g) => g.specimen === specimen && g.quantity === quantity && g.position === position);
    return found.reduce<Group | null>((best, g) => (best === null || doubt(g) < doubt(best) ? g : best), null);
  }

  /** Specimens on which a quantity was read. */
  specimensWith(quantity: string): string[] {
    return [...new Set(this.of(quantity).map((g) => g.specimen))];
  }
}

/** Limit of error of a group's tool at its mean, SI. */
export function doubt(g: Group): number {
  return g.tool.limit.absolute + g.tool.limit.fraction * Math.abs(g.mean);
}
