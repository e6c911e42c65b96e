/** A job that cables are chosen for, with the weights that suit it; shares of the whole. */
export interface Job {
  /** As plan.csv names it. */
  job: string;
  text: string;
  weights: Readonly<Record<string, number>>;
}

/**
 * Starting points by the job. Common practice, no source: each is to be moved. `bend` is judged ease where pairs were judged and
 * measured stiffness elsewhere; `endurance` is shared by all tests of it.
 */
export const JOBS: readonly Job[] = [
  {
    job: 'cheapest that carries it',
    text: 'A fixed run with room to spare: what it carries and costs.',
    weights: { price: 0.4, resistance: 0.25, current: 0.2, copper: 0.15 },
  },
  {
    job: 'tight bends',
    text: 'Short ways round corners, behind trim and into boxes.',
    weights: { bend: 0.45, outer_diameter: 0.1, copper: 0.2, wall: 0.1, price: 0.15 },
  },
  {
    job: 'under the vehicle',
    text: 'Stones, edges, salt and heat: what lasts.',
    weights: { endurance: 0.35, wall: 0.25, copper: 0.2, bend: 0.05, price: 0.15 },
  },
  {
    job: 'long run',
    text: 'Many metres from front to back: little lost on the way, for the money and the weight.',
    weights: { resistance: 0.45, price: 0.3, copper: 0.15, mass: 0.1 },
  },
];

/** Taken where nobody stated a weight. */
export const EVEN: Readonly<Record<string, number>> = { copper: 1, bend: 1, wall: 1, price: 1 };

/** The job of a name, whatever its case; null when there is none. */
export const jobNamed = (name: string): Job | null =>
  JOBS.find(({ job }) => job === name.trim().toLowerCase().replace(/\s+/g, ' ')) ?? null;

/** The id prefix that all endurance tests share. */
export const ENDURANCE = 'endurance:';

/**
 * Weights by criterion that is there: `bend` and `endurance` resolved, what nothing is known of left out.
 *
 * @param there ids of the criteria that have at least one figure
 */
export function resolveWeights(
  weights: Readonly<Record<string, number>> | ReadonlyMap<string, number>,
  there: readonly string[],
): Map<string, number> {
  const named = weights instanceof Map ? [...weights] : Object.entries(weights);
  const resolved = new Map<string, number>();
  const add = (id: string, weight: number) => {
    if (there.includes(id)) resolved.set(id, (resolved.get(id) ?? 0) + weight);
  };
  for (const [id, weight] of named) {
    if (!(weight > 0)) continue;
    const tests = there.filter((t) => t.startsWith(ENDURANCE));
    if (id === 'bend') add(there.includes('judged') ? 'judged' : 'stiffness', weight);
    else if (id === 'endurance') for (const test of tests) add(test, weight / tests.length);
    else add(id, weight);
  }
  const sum = [...resolved.values()].reduce((a, b) => a + b, 0);
  return new Map([...resolved].map(([id, weight]) => [id, weight / sum]));
}

/** The same for an order of importance: groups of ids, the most important first. */
export function resolveRanking(ranking: readonly (readonly string[])[], there: readonly string[]): string[][] {
  const seen = new Set<string>();
  return ranking
    .map((group) =>
      group
        .flatMap((id) => [...resolveWeights({ [id]: 1 }, there).keys()])
        .filter((id) => !seen.has(id) && seen.add(id)),
    )
    .filter((group) => group.length > 0);
}
