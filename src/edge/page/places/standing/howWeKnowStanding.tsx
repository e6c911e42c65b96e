import type { Decide } from '../../../../findings/shapes/decide.ts';
import { wholeText } from '../../../../units/wholeText.ts';
import { HowFold } from '../../parts/howFold.tsx';

const PERCENT = 100;

/** The statistics behind the place, for those who want them. */
export function HowWeKnowStanding({ decide }: { decide: Decide }) {
  return (
    <HowFold>
      <p>
        Every cable is drawn {wholeText(decide.draws)} times from its findings. One draw takes the errors of the tools,
        the metals, the judged ease of bending (a multivariate normal of the paired comparisons) and everything else for
        all cables together, so that what they have in common parts none of them. Each figure becomes a worth on a scale
        with two fixed ends, never on the best and worst of the field: taking the last cable away changes no other’s
        place. The weighted worths are ordered in each draw, ties shared.
      </p>
      <p>
        Bands are clean cuts: every cable above a cut stands before every cable below it with a chance above{' '}
        {Math.round(PERCENT * decide.cut_above)} %. By simulation equal cables are parted in about 7 % of fields of four
        and more, and in 10 % of pairs.
      </p>
      <p>
        Tastes are drawn about the weights: from a Dirichlet distribution with concentration 30 for numbers, evenly over
        all weights that keep the order for a ranking, whose own weights are the rank-order centroid. Acceptability and
        central weights follow R. Lahdelma and P. Salminen, SMAA-2 (Operations Research 49, 2001). What would have to
        matter more is the nearest set of weights (least sum of changes, a linear program) at which the mean worth is
        the greatest. A figure nobody measured may lie anywhere on its scale; it never counts as nothing.
      </p>
    </HowFold>
  );
}
