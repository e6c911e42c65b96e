import { textHash } from '../../journal/textHash.ts';
import type { Trial } from '../../trial/trial.ts';

/** One piece cut for abuse, as far as one test is concerned. */
export interface AbusePiece {
  specimen: string;
  cable: string;
  /** It was through this test. */
  done: boolean;
  /** Other tests that it was through: its jacket is no longer fresh. */
  usedIn: string[];
}

export interface PiecesToAbuse {
  all: AbusePiece[];
  /** Fresh pieces in the order in which they are taken. */
  left: AbusePiece[];
}

const plain = (test: string) => test.trim().toLowerCase().replace(/\s+/g, ' ');

/**
 * The pieces of a test in the order in which they are taken: by rounds, one of each cable a round, mixed anew in every round, so that
 * a needle that wears or an arm that tires falls on all cables alike. The order follows from the names alone and is the same on every
 * device. Pieces of the control are left out.
 */
export function piecesToAbuse(
  { trial, cables, specimens, endurance }: Pick<Trial, 'trial' | 'cables' | 'specimens' | 'endurance'>,
  test: string,
): PiecesToAbuse {
  const control = new Set(cables.filter((c) => c.role === 'control').map((c) => c.cable));
  const mixed = (text: string) => textHash(JSON.stringify([trial, plain(test), text]));
  const rounds = new Map<string, number>();
  const all = specimens
    .filter((s) => s.kind === 'abuse' && !control.has(s.cable))
    .map(({ specimen, cable }) => {
      const round = rounds.get(cable) ?? 0;
      rounds.set(cable, round + 1);
      const tests = endurance.filter((e) => e.specimen === specimen).map((e) => plain(e.row.test ?? ''));
      const usedIn = [...new Set(tests.filter((t) => t !== plain(test)))];
      return { specimen, cable, done: tests.includes(plain(test)), usedIn, round, key: mixed(specimen) };
    })
    .sort((a, b) => a.round - b.round || (a.key < b.key ? -1 : 1))
    .map(({ specimen, cable, done, usedIn }): AbusePiece => ({ specimen, cable, done, usedIn }));
  return { all, left: all.filter((p) => !p.done && p.usedIn.length === 0) };
}
