import type { Shares } from './shares.ts';

type Ranks = readonly (readonly string[])[];

/** The order of importance that shares amount to: equal shares level, those of nothing left out. */
export function rankOf(shares: Shares): string[][] {
  const sorted = [...shares].filter(([, share]) => share > 0).sort((a, b) => b[1] - a[1]);
  const groups: { share: number; ids: string[] }[] = [];
  for (const [id, share] of sorted) {
    const last = groups.at(-1);
    if (last?.share === share) last.ids.push(id);
    else groups.push({ share, ids: [id] });
  }
  return groups.map(({ ids }) => ids);
}

const placeOf = (ranks: Ranks, id: string) => ranks.findIndex((group) => group.includes(id));
const without = (ranks: Ranks, id: string) => ranks.map((group) => group.filter((other) => other !== id));
const filled = (ranks: string[][]) => ranks.filter((group) => group.length > 0);

/** One place up: out of a level group before it, else before the group above. */
export function upOne(ranks: Ranks, id: string): string[][] {
  const place = placeOf(ranks, id);
  const rest = without(ranks, id);
  const to = ranks[place]!.length > 1 ? place : Math.max(0, place - 1);
  return filled([...rest.slice(0, to), [id], ...rest.slice(to)]);
}

/** One place down: out of a level group behind it, else behind the group below. */
export function downOne(ranks: Ranks, id: string): string[][] {
  const place = placeOf(ranks, id);
  const rest = without(ranks, id);
  const to = ranks[place]!.length > 1 ? place + 1 : place + 2;
  return filled([...rest.slice(0, to), [id], ...rest.slice(to)]);
}

/** Level with the group above. */
export function levelWithAbove(ranks: Ranks, id: string): string[][] {
  const place = placeOf(ranks, id);
  if (place <= 0) return ranks.map((group) => [...group]);
  return filled(without(ranks, id).map((group, at) => (at === place - 1 ? [...group, id] : group)));
}

export const leftOut = (ranks: Ranks, id: string): string[][] => filled(without(ranks, id));
