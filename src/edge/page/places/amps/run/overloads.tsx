import { overloads } from '../../../../../methods/current/runCheck/overload.ts';
import { smallOverload } from '../../../../../methods/current/runCheck/problems.ts';
import { overloadSupposed, overloadText } from '../../../../../report/runOverload.ts';
import { noBreak } from '../../../../../report/words/noBreak.ts';
import { Name } from '../../../parts/name.tsx';
import { looked, overload } from '../../../store/amps/running.ts';
import { useAfterRest } from './useAfterRest.ts';

/** How long one run of every measured cable lasts until its jacket's rating, under the overload that is asked about. */
export function Overloads() {
  const { question, check } = looked.value;
  const current = overload.value;
  const lasting = useAfterRest(() => {
    const [none] = smallOverload(current, question);
    if (none !== undefined) return { of: [], supposed: none };
    const of = overloads(question, check.answers, current);
    const all = of.length === check.answers.filter((a) => a.cable.measured).length;
    return { of, supposed: of.length === 0 ? '' : overloadSupposed(question, { stated: current !== null, all }) };
  }, [question, check, current]);
  if (lasting === null || (lasting.of.length === 0 && lasting.supposed === '')) return null;
  return (
    <section class="run-fuses" aria-labelledby="run-overload">
      <h2 id="run-overload">How long until the rating</h2>
      {lasting.of.length === 0 ? (
        <p role="alert">{noBreak(lasting.supposed)}</p>
      ) : (
        <>
          <ul>
            {lasting.of.map((one) => (
              <li key={one.cable.id}>
                <Name>{one.cable.name || one.cable.id}</Name> {noBreak(overloadText(one))}
              </li>
            ))}
          </ul>
          <p class="note legend">{noBreak(lasting.supposed)}</p>
        </>
      )}
    </section>
  );
}
