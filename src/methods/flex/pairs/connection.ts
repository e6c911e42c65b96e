import { type JudgedPair, requirePairs } from './judgement.ts';

/** Groups of things that a path of steps joins in one direction: from i to j wherever `steps[i]` holds j. */
function reachable(steps: readonly (readonly number[])[], from: number): Set<number> {
  const seen = new Set([from]);
  const waiting = [from];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop())
    for (const next of steps[at])
      if (!seen.has(next)) {
        seen.add(next);
        waiting.push(next);
      }
  return seen;
}

function stepsOf(pairs: readonly JudgedPair[], count: number, both: boolean): number[][] {
  const steps = Array.from({ length: count }, (): number[] => []);
  for (const { left, right, result } of pairs) {
    if (both || result !== 'right') steps[left].push(right);
    if (both || result !== 'left') steps[right].push(left);
  }
  return steps;
}

/**
 * The things in groups that pairs connect, whoever was preferred. More than one group: nothing but the prior joins them, and
 * their order says nothing.
 */
export function connectedGroups(pairs: readonly JudgedPair[], count: number): number[][] {
  requirePairs(pairs, count);
  const steps = stepsOf(pairs, count, true);
  const groups: number[][] = [];
  const placed = new Set<number>();
  for (let i = 0; i < count; i++) {
    if (placed.has(i)) continue;
    const group = [...reachable(steps, i)].sort((a, b) => a - b);
    for (const one of group) placed.add(one);
    groups.push(group);
  }
  return groups;
}

/** Number of the group that each thing is joined to by pairs; a thing that no pair holds is a group of its own. */
export function joinedGroups(pairs: readonly { left: number; right: number }[], count: number): number[] {
  const group = Array.from({ length: count }, (_, i) => i);
  for (const { left, right } of pairs) {
    const [kept, gone] = [group[left], group[right]];
    for (let i = 0; i < count; i++) if (group[i] === gone) group[i] = kept;
  }
  return group;
}

/**
 * Things apart from the rest in one direction: sets that won, or lost, every pair with the others, so that without a prior
 * their figures run away to infinity. Empty when a finite answer exists, which is when preferences lead from every thing to
 * every other (a tie counts both ways).
 *
 * Source: L. R. Ford, American Mathematical Monthly 64 (1957) no. 8 part 2, 28. From memory.
 *
 * @returns strongly connected groups, when there are more than one.
 */
export function separation(pairs: readonly JudgedPair[], count: number): number[][] {
  requirePairs(pairs, count);
  const steps = stepsOf(pairs, count, false);
  const reach = Array.from({ length: count }, (_, i) => reachable(steps, i));
  const groups: number[][] = [];
  const placed = new Set<number>();
  for (let i = 0; i < count; i++) {
    if (placed.has(i)) continue;
    const group = [...reach[i]].filter((j) => reach[j].has(i)).sort((a, b) => a - b);
    for (const one of group) placed.add(one);
    groups.push(group);
  }
  return groups.length > 1 ? groups : [];
}
