import { decideBy } from '../../../findings/standing/decide.ts';
import { orderBy } from '../../../findings/standing/orderBy.ts';
import type { PreparedStanding, StandingGround } from '../../../findings/standing/prepare.ts';
import { standingWarnings } from '../../../findings/standing/standing.ts';
import { prepareAtHand, standingGroundOf } from '../../../findings/standing/standingAtHand.ts';
import { type Weighting, weightingOf, wishOf } from '../../../findings/standing/weighting.ts';
import { fold } from '../../../trial/fold.ts';
import type { Jobs, WishSent } from './jobs.ts';

/** What this worker was told last, so that a change of weights costs no more than counting the draws again. */
let ground: Omit<StandingGround, 'draws'> | null = null;
let prepared: PreparedStanding | null = null;
/** Draws and scales that it is prepared for. */
let preparedFor: { draws: number; scales: string } | null = null;
/** Up to so many draws keep their figures, so that a scale can follow the finger: some 25 MB for 12 cables and 14 criteria. */
const MOST_DRAWS_KEPT = 20_000;

/**
 * Where the cables stand by some weights. `fresh` begins another journal; draws and scales that were had before are not drawn
 * again. Null when fewer than two cables have anything to be ordered by.
 */
export function standingJob(
  { fresh, draws, scales, wish, quick }: Jobs['standing']['ask'],
  tell: (drawn: number) => void,
): Jobs['standing']['answer'] {
  if (fresh !== null) {
    ground = standingGroundOf(fold(fresh));
    preparedFor = null;
  }
  if (ground === null) throw new RangeError('A standing is asked for before any entries were given.');
  const wanted = { draws, scales: JSON.stringify(scales) };
  if (preparedFor?.draws !== draws || preparedFor.scales !== wanted.scales) {
    const onBlock = (drawn: number) => {
      tell(drawn);
      return false;
    };
    const keepRaw = draws <= MOST_DRAWS_KEPT;
    const before = keepRaw && preparedFor?.draws === draws ? prepared : null;
    prepared = prepareAtHand(ground, { draws, scales, keepRaw, before, onBlock });
    preparedFor = wanted;
  }
  if (prepared === null) return null;
  const weighting = weightingFor(prepared, wish);
  if (quick) return { order: orderBy(prepared, weighting), full: null };
  const decide = decideBy(prepared, weighting);
  const warnings = [...prepared.warnings, ...standingWarnings(prepared, weighting)];
  const { draws: done, cables, sentence } = decide;
  return {
    order: { draws: done, cables, sentence, weights: weightsOf(prepared, weighting) },
    full: { decide, warnings },
  };
}

const weightsOf = ({ criteria }: PreparedStanding, { weights }: Weighting) =>
  criteria.map(({ id }, k) => ({ criterion: id, weight: weights[k]! }));

function weightingFor({ settings, criteria }: PreparedStanding, wish: WishSent | null): Weighting {
  const there = criteria.map(({ id }) => id);
  if (wish === null) return weightingOf(wishOf(settings), there);
  return weightingOf('numbers' in wish ? { numbers: new Map(Object.entries(wish.numbers)) } : wish, there);
}
