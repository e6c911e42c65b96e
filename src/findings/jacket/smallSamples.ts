import type { EnduranceCable, EnduranceTest } from '../shapes/jacket.ts';
import { pairKey } from './amountPairs.ts';

/** From so many pieces a cable on, samples are no longer called few. */
const FEW = 10;

/** Whether anything is said of a cable within an interval: how long such pieces last, with an end, or how many come through. */
const hasInterval = ({ median, passed }: EnduranceCable): boolean =>
  passed !== null || (median?.interval.some((end) => end !== null) ?? false);

/** That the samples are small, and how many pieces of each cable would part neighbours that are not parted. */
export function smallSamples(test: EnduranceTest, neighbours: ReadonlySet<string> = new Set()): string {
  const compared = test.cables.filter((c) => c.role === 'compared');
  const most = Math.max(0, ...compared.map((c) => c.n));
  const least = Math.min(most, ...compared.map((c) => c.n));
  if (most === 0 || least >= FEW) return '';
  const count = least === most ? `${most}` : `${least} to ${most}`;
  const differ = compared.length > 1 ? ', and cables that are not parted may well differ' : '';
  const so = compared.some(hasInterval) ? 'the intervals are wide' : 'no interval can be given';
  const few = `${count} ${most === 1 ? 'piece of a cable is' : 'pieces of a cable are'} few: ${so}${differ}.`;
  const name = new Map(test.cables.map((c) => [c.cable, c.name]));
  const plans = test.pairs
    .filter((p) => p.pieces_to_part !== null && neighbours.has(pairKey(p.a, p.b)))
    .map((p) => `${name.get(p.a)} and ${name.get(p.b)} with about ${p.pieces_to_part} pieces of each`);
  if (plans.length === 0) return few;
  return `${few} If the differences are as large as these pieces show, eight trials of ten would part ${plans.join('; ')}, all run until they fail.`;
}
