import type { BenchAct } from '../../../../findings/nextAct.ts';
import { BEFORE, OF_QUANTITY } from './beforeWords.ts';

/** How to take the reading in hand, and the caution that belongs to its step. */
export function Before({ act }: { act: BenchAct }) {
  const { head, how, caution } = BEFORE[act.item.step];
  const more = OF_QUANTITY[act.item.quantity];
  return (
    <section class="before">
      <h2>{head}</h2>
      <p>{more === undefined ? how : `${more} ${how}`}</p>
      <p class="caution">
        <b>Mind:</b> {caution}
      </p>
    </section>
  );
}
