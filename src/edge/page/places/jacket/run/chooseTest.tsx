import { piecesToAbuse } from '../../../../../findings/bench/piecesToAbuse.ts';
import { PROTOCOLS, protocolOf } from '../../../../../methods/jacket/protocols/protocols.ts';
import type { Trial } from '../../../../../trial/trial.ts';
import { capital } from '../../../../../units/capital.ts';
import { jacketRoute } from '../../../store/jacket/openInJacket.ts';
import { chooseTest } from '../../../store/jacket/running.ts';
import { addressOf } from '../../../store/routeOf.ts';

/** Every described test with the question that it answers, and one of one's own. */
export function ChooseTest({ trial }: { trial: Trial }) {
  const fresh = piecesToAbuse(trial, '').all.filter((p) => p.usedIn.length === 0).length;
  const rowsOf = (name: string) => trial.endurance.filter((e) => protocolOf(e.row.test ?? '')?.name === name).length;
  return (
    <>
      <h1>Which test?</h1>
      <p class="note">
        {fresh === 0
          ? 'Every piece cut for abuse has been through a test. Cut more, or choose one by hand while the test runs.'
          : `${fresh} fresh ${fresh === 1 ? 'piece is' : 'pieces are'} left. A test uses its pieces up.`}{' '}
        Dry and cold tests come before heat and fluids, and heat and fluids never on one day or in one room. There is no
        test by burning: it is a hazard, and density tells more.
      </p>
      <ul class="tests">
        {PROTOCOLS.map((protocol) => {
          const rows = rowsOf(protocol.name);
          return (
            <li key={protocol.name}>
              <button type="button" class="button" onClick={() => chooseTest(protocol)}>
                {capital(protocol.name)}
              </button>
              <p>
                {protocol.asks}
                {rows > 0 && <span class="unknown"> {rows} on record.</span>}
              </p>
            </li>
          );
        })}
        <li>
          <button type="button" class="button" onClick={() => chooseTest(null)}>
            One of your own
          </button>
          <p>Anything that wears a jacket and can be counted, timed or read off a tool.</p>
        </li>
      </ul>
      <p>
        <a href={addressOf(jacketRoute(trial.trial, { what: 'nothing' }))}>What is known of the jackets so far</a>
      </p>
    </>
  );
}
