import { overhangAdvice } from '../../../../findings/bench/overhangAdvice.ts';
import type { BenchAct } from '../../../../findings/nextAct.ts';
import { lengthWords } from '../../../../report/words/lengthWords.ts';
import { Mind } from '../../parts/mind.tsx';
import { folded } from '../../store/journal/journal.ts';
import { units } from '../../store/units.ts';
import { BEFORE, HOW_INSTEAD, OF_QUANTITY } from './beforeWords.ts';

/** How to take the reading in hand, and the caution that belongs to its step. */
export function Before({ act }: { act: BenchAct }) {
  const { head, how, caution } = BEFORE[act.item.step];
  const more = OF_QUANTITY[act.item.quantity];
  return (
    <section class="before">
      <h2>{head}</h2>
      <p>{[more, HOW_INSTEAD[act.item.quantity] ?? how].filter(Boolean).join(' ')}</p>
      <Overhang act={act} />
      <Mind>{caution}</Mind>
    </section>
  );
}

/** How much to let hang free, where that is about to be measured. */
function Overhang({ act }: { act: BenchAct }) {
  const trial = folded.value;
  if (act.item.quantity !== 'overhang' || trial === null) return null;
  const advice = overhangAdvice(trial, act.item.specimen);
  if (advice === null) return null;
  const { overhang, best, from } = advice;
  const short =
    best > overhang
      ? ` That is all that this piece leaves; about ${lengthWords(best, units.value)} would be read best.`
      : '';
  const reason = from === 'its own droop' ? 'by its own droop' : `a guess from ${from}, until its first droop`;
  return (
    <p>
      <b>Let about {lengthWords(overhang, units.value)} hang free</b>, {reason}
      {short === '' ? ': there a rule tells most.' : '.'}
      {short}
    </p>
  );
}
