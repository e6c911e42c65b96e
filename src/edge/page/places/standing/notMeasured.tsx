import { looseScales, looseSentence } from '../../../../report/standing/looseScales.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { addressOf } from '../../store/routeOf.ts';
import { openDoor } from './doorOpen.ts';
import type { Stood } from './order.tsx';

/** What stays behind the door: it is about the criteria and said there. */
const BEHIND: ReadonlySet<string> = new Set(['standing-alike', 'standing-scales-suggested']);

/** What is open: figures nobody measured, wishes that nothing answers, scales that nobody fixed. */
export function NotMeasured({ stood }: { stood: Stood }) {
  const { warnings, trial } = stood;
  const told = warnings.filter(({ code }) => !BEHIND.has(code));
  const unknown = told.some(({ code }) => code === 'standing-unknown' || code === 'standing-left-out');
  const names = looseScales(stood.decide.criteria);
  if (told.length === 0 && names.length === 0) return null;
  return (
    <section class="standing-open">
      <h3>Still open</h3>
      <ul>
        {told.map(({ code, cable, text }) => (
          <li key={`${code} ${cable} ${text}`}>{noBreak(text)}</li>
        ))}
        {names.length > 0 && (
          <li>
            {looseSentence(names)}{' '}
            <button type="button" class="link" onClick={openDoor}>
              {names.length === 1 ? 'Fix it' : 'Fix them'} before this order is shown to anybody
            </button>
            .
          </li>
        )}
      </ul>
      {unknown && (
        <p>
          <a href={addressOf({ place: 'bench', trial, slate: false })}>Measure what is missing</a>
        </p>
      )}
    </section>
  );
}
