import type { OutlookOptions } from '../../methods/decide/planPower.ts';
import type { Cable } from '../../trial/trial.ts';
import type { SizeClaim } from '../../units/sizeText.ts';
import { asksForCopper, readLabel } from '../claims/label.ts';
import type { BenchTools } from './benchTools.ts';
import { wantedBy, workWith } from './plannedWork.ts';
import { type PlanPower, powerOfPlan } from './powerOfPlan.ts';
import type { PlanSettings } from './settings.ts';
import { type SmallestPlan, smallestPlan } from './smallestPlan.ts';

/** What the plan would show of cables with one label. */
export interface LabelPower {
  /** As on the label. */
  size: string;
  cables: string[];
  /** null: with the tools listed nothing of the conductor is read. */
  power: PlanPower | null;
  /** Least work that shows the shortfall 90 times in 100; null when it was not asked for. */
  smallest: SmallestPlan | null;
}

export interface PowersOptions {
  /** Imagined cables of each size; 0 leaves power out. */
  draws: number;
  seed: string;
  /** Whether the smallest plan is searched for too, which takes a few times longer. */
  withSmallest: boolean;
  /** Hears how many plans have been tried so far, over all labels. */
  onTried?: (tried: number) => void;
}

interface Alike {
  size: SizeClaim;
  text: string;
  cables: Cable[];
  wholeLength: number;
}

/** Compared cables in groups of one label; each group's shortest whole length is what ohms are planned on. */
function alike(cables: readonly Cable[], wholeLengths: ReadonlyMap<string, number>): Alike[] {
  const groups = new Map<string, Alike>();
  for (const cable of cables) {
    const { size, metal } = readLabel(cable.label);
    if (cable.role === 'control' || !size || size.area === null || !asksForCopper(metal)) continue;
    const whole = wholeLengths.get(cable.cable) ?? 1;
    const key = `${size.system} ${size.area} ${size.atLeast}`;
    const seen = groups.get(key);
    if (seen) {
      seen.cables.push(cable);
      seen.wholeLength = Math.min(seen.wholeLength, whole);
    } else groups.set(key, { size, text: cable.label.size, cables: [cable], wholeLength: whole });
  }
  return [...groups.values()];
}

/**
 * Whether the plan shows the shortfall that it is to show, for each label of the trial that claims copper.
 *
 * @param wholeLengths m, bought or to be bought, by cable
 */
export function planPowers(
  cables: readonly Cable[],
  wholeLengths: ReadonlyMap<string, number>,
  settings: PlanSettings,
  tools: BenchTools,
  { draws, seed, withSmallest, onTried }: PowersOptions,
): LabelPower[] {
  if (draws === 0) return [];
  let tried = 0;
  const onTry = () => onTried?.(++tried);
  return alike(cables, wholeLengths).map(({ size, text, cables: group, wholeLength }) => {
    const strands = group.find((c) => c.label.strands !== null)?.label.strands ?? null;
    const work = workWith(tools, { area: size.area!, wholeLength, strands }, wantedBy(settings));
    const metal: OutlookOptions['metal'] = settings.metal;
    const o = { shortfall: settings.shortfall, metal, draws, seed };
    return {
      size: text,
      cables: group.map((c) => c.cable),
      power: powerOfPlan(size, work, o),
      smallest: withSmallest
        ? smallestPlan({ ...o, size, wholeLength, strands, tools, cables: group.length, onTry })
        : null,
    };
  });
}

/** One sentence for the whole plan: that of its only label, or of the label that it serves worst. */
export function powersSentence(powers: readonly LabelPower[]): string {
  const readable = powers.flatMap(({ size, power }) => (power ? [{ size, power }] : []));
  if (powers.length === 0) return '';
  if (readable.length === 0)
    return 'With the tools listed nothing of the conductor can be read: this plan shows no shortfall.';
  const worst = readable.reduce((a, b) => (b.power.short.fallsShort < a.power.short.fallsShort ? b : a));
  return readable.length === 1
    ? worst.power.sentence
    : `Label ${worst.size}, the hardest to settle: ${worst.power.sentence}`;
}
