import type { Trial } from '../../trial/trial.ts';
import type { PlanSettings } from '../plan/settings.ts';

/** What eyes and a magnet are asked for, in the order of the work. */
export const LOOKS = ['print_on_jacket', 'scraped_strand', 'magnet'] as const;
export type Look = (typeof LOOKS)[number];

/** One kind of look at every cable. */
export interface LookItem {
  look: Look;
  /** Cables that it is wanted of, as they are listed. */
  cables: string[];
  /** Those of them that nobody has looked at so yet. */
  left: string[];
}

/** Looks wanted where the plan wants eyes: once for each cable, control pieces left out. */
export function wantedLooks(
  { cables, evidence }: Pick<Trial, 'cables' | 'evidence'>,
  { methods }: Pick<PlanSettings, 'methods'>,
): LookItem[] {
  if (!methods.has('eye')) return [];
  const compared = cables.filter(({ role }) => role !== 'control');
  return LOOKS.map((look) => {
    const done = new Set(evidence.filter((e) => e.look === look && e.seen !== '').map((e) => e.cable));
    // A print may stand on the cable's own row, as it was read when the cable was bought.
    if (look === 'print_on_jacket')
      for (const { cable, label } of compared) if (label.printedOnJacket !== '') done.add(cable);
    const wanted = compared.map(({ cable }) => cable);
    return { look, cables: wanted, left: wanted.filter((cable) => !done.has(cable)) };
  }).filter((item) => item.cables.length > 0);
}
