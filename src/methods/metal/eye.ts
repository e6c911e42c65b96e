import { METALS, type Metal } from './hypotheses.ts';

/**
 * What eyes and a magnet say about the metal, as the chance of seeing it if the strand were of that metal.
 *
 * One table, set by judgement: common practice, no source. A scraped strand is misread now and then (a tin skin taken for
 * bare metal, a thin copper skin scraped too shallow), so no chance is 0 or 1.
 */
interface Sight {
  look: string;
  /** Words that people write for it, all lower case; the first is the one we print. */
  seen: readonly string[];
  chance: Readonly<Record<Metal, number>>;
}

const SIGHTS: readonly Sight[] = [
  {
    look: 'scraped_strand',
    seen: ['red through', 'copper through', 'red all through', 'solid copper', 'copper colour through'],
    chance: {
      copper: 0.96,
      'tinned copper': 0.03,
      'copper-clad aluminium': 0.02,
      'tinned clad aluminium': 0.002,
      aluminium: 0.001,
      'copper-clad steel': 0.02,
      mixed: 0.5,
      other: 0.01,
    },
  },
  {
    look: 'scraped_strand',
    seen: ['tin outside', 'tin outside, red below', 'silver outside, red inside', 'tinned', 'tin visible'],
    chance: {
      copper: 0.02,
      'tinned copper': 0.95,
      'copper-clad aluminium': 0.01,
      'tinned clad aluminium': 0.1,
      aluminium: 0.01,
      'copper-clad steel': 0.01,
      mixed: 0.3,
      other: 0.05,
    },
  },
  {
    look: 'scraped_strand',
    seen: ['white core', 'white inside', 'silver core', 'grey core', 'aluminium inside'],
    chance: {
      copper: 0.005,
      'tinned copper': 0.01,
      'copper-clad aluminium': 0.95,
      'tinned clad aluminium': 0.85,
      aluminium: 0.15,
      'copper-clad steel': 0.7,
      mixed: 0.5,
      other: 0.1,
    },
  },
  {
    look: 'scraped_strand',
    seen: ['white through', 'white all through', 'silver through', 'grey through'],
    chance: {
      copper: 0.001,
      'tinned copper': 0.02,
      'copper-clad aluminium': 0.05,
      'tinned clad aluminium': 0.1,
      aluminium: 0.95,
      'copper-clad steel': 0.02,
      mixed: 0.1,
      other: 0.3,
    },
  },
  {
    look: 'magnet',
    seen: ['pulls', 'pull', 'sticks'],
    chance: {
      copper: 0.01,
      'tinned copper': 0.01,
      'copper-clad aluminium': 0.01,
      'tinned clad aluminium': 0.01,
      aluminium: 0.01,
      'copper-clad steel': 0.97,
      mixed: 0.02,
      other: 0.2,
    },
  },
  {
    look: 'magnet',
    seen: ['no pull', 'does not pull', 'nothing', 'no'],
    chance: {
      copper: 0.99,
      'tinned copper': 0.99,
      'copper-clad aluminium': 0.99,
      'tinned clad aluminium': 0.99,
      aluminium: 0.99,
      'copper-clad steel': 0.03,
      mixed: 0.98,
      other: 0.8,
    },
  },
];

/** One person looking at strands of one piece repeats their own habit: together they never count for more than e^5 to 1. */
const LARGEST_LOG_RATIO = 5;

/** How often one strand is misread. */
const MISREAD = 0.05;
/** Share of clad strands that 'mixed' stands for when strands are counted one by one, averaged over its classes. */
const MIXED_SHARES = [0.25, 0.5, 0.75];

export interface EyeEvidence {
  look: string;
  seen: string;
  /** Strands looked at, and how many of them showed it; null when not stated (then one look). */
  count: number | null;
  seenIn: number | null;
}

function sightOf(look: string, seen: string): Sight | undefined {
  const where = look
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, '_');
  const what = seen.trim().toLowerCase();
  return SIGHTS.find((s) => s.look === where && s.seen.includes(what));
}

/** Whether the table knows what was seen; what it does not know is kept on record and changes nothing. */
export function isKnownSight(look: string, seen: string): boolean {
  return sightOf(look, seen) !== undefined;
}

/** What can be entered for each look, in the words that we print. */
export function knownSights(): { look: string; seen: string }[] {
  return SIGHTS.map((s) => ({ look: s.look, seen: s.seen[0] }));
}

function lnChance(sight: Sight, metal: Metal, count: number, seenIn: number): number {
  const bernoulli = (p: number) => seenIn * Math.log(p) + (count - seenIn) * Math.log(1 - p);
  const p = sight.chance[metal];
  if (count === 1) return bernoulli(p);
  if (metal === 'mixed') {
    // A mixed bundle shows each thing in as many strands as it holds of that kind.
    const shares = MIXED_SHARES.map((share) => Math.exp(bernoulli(share)));
    return Math.log(shares.reduce((a, b) => a + b, 0) / shares.length);
  }
  if (metal === 'other') {
    // An unnamed metal may or may not look like this, but then it does so in every strand, misreadings aside.
    return Math.log(p * Math.exp(bernoulli(1 - MISREAD)) + (1 - p) * Math.exp(bernoulli(MISREAD)));
  }
  return bernoulli(p);
}

/**
 * Natural log of the likelihood of everything seen, for each metal, relative to the likeliest one (so the largest is 0).
 *
 * `ln L(metal) = Σ looks [ s·ln p + (n − s)·ln(1 − p) ]`, p from the table, each look limited to a ratio of e^5.
 */
export function lnLikelihoodOfSight(evidence: readonly EyeEvidence[]): Record<Metal, number> {
  const total = Object.fromEntries(METALS.map((m) => [m, 0])) as Record<Metal, number>;
  for (const e of evidence) {
    const sight = sightOf(e.look, e.seen);
    if (!sight) continue;
    const count = Math.max(1, e.count ?? 1);
    const seenIn = Math.min(count, e.seenIn ?? count);
    const terms = METALS.map((m) => lnChance(sight, m, count, seenIn));
    const best = Math.max(...terms);
    METALS.forEach((m, i) => {
      total[m] += Math.max(terms[i] - best, -LARGEST_LOG_RATIO);
    });
  }
  const best = Math.max(...METALS.map((m) => total[m]));
  for (const m of METALS) total[m] -= best;
  return total;
}
