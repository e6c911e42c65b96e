import { progressRule } from '../../../../../report/progressRule.ts';
import { variablesTheme } from '../../../../../report/theme.ts';
import { Picture } from '../../../parts/picture.tsx';
import { useWidth } from '../../../parts/useWidth.ts';
import type { JudgedSoFar } from '../../../store/bend/judgedPieces.ts';

const FIRST_WIDTH = 600;

/** How many answers there are, and how many more make an order to be spoken of. */
export function JudgeProgress({ soFar }: { soFar: JudgedSoFar }) {
  const [place, width] = useWidth<HTMLDivElement>(FIRST_WIDTH);
  const { done, wanted, left, judges } = soFar;
  return (
    <div class="judge-progress" ref={place}>
      <Picture silent svg={progressRule(Math.min(done, wanted), wanted, { width, theme: variablesTheme })} />
      <p>
        <b>{left === 0 ? `${done} answers` : `${done} of ${wanted}`}</b>{' '}
        <span>
          {left === 0 ? `${wanted} are enough to speak of an order` : `${left} more for an order to be spoken of`}
          {judges.length > 1 ? `; ${judges.length} judges` : ''}
        </span>
      </p>
    </div>
  );
}
