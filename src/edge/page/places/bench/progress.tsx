import type { BenchList } from '../../../../findings/nextAct.ts';
import { progressRule } from '../../../../report/progressRule.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { lackingContacts } from '../../store/bench/contacts.ts';
import { openQuestions } from '../../store/bench/questions.ts';
import { room, roomUnit, targetText } from '../../store/bench/room.ts';

/** How far the work is: a rule with a tick for each reading, and the same in words. */
export function Progress({ work }: { work: BenchList }) {
  const [rule, width] = useWidth<HTMLDivElement>(360);
  const { done, wanted, left } = work.progress;
  if (wanted === 0) return null;
  const open = openQuestions.value.length + lackingContacts.value.length;
  const warm = room.value.trim() === '' ? '' : `room ${room.value.trim()} °${roomUnit.value}`;
  return (
    <div class="progress" ref={rule}>
      <Picture silent svg={progressRule(done, wanted, { width, theme: variablesTheme })} />
      <p>
        <span>
          <b>
            {done} of {wanted} readings
          </b>
          {left === 0 ? ', nothing left' : `, ${left} left`}
          {open === 0 ? '' : open === 1 ? ', 1 question open' : `, ${open} questions open`}
        </span>
        <span>{[warm, targetText.value].filter((words) => words !== '').join(', ')}</span>
      </p>
    </div>
  );
}
