import type { Current } from '../../../../findings/shapes/current.ts';

/** The physics and statistics behind the place, for those who want them. */
export function HowWeKnowAmps({ current }: { current: Current }) {
  const tests = current.cables.flatMap((c) => c.heating_tests.map((test) => ({ name: c.name || c.cable, test })));
  return (
    <details class="how">
      <summary>
        <h2>How we know</h2>
      </summary>
      <p>
        Ohms by four wires are the slope of volts over amps, so that what two warm metals make by themselves stays in
        the intercept. A heating is fitted by one and by two exponentials under several suppositions about scatter and
        drift, weighed by restricted likelihood; it is answered only from logs of two time constants, or three of the
        slower, and where the end is known to 10 %. What a cable carries is where its own heat, growing with the
        temperature, equals what still air (Churchill and Chu) and radiation take from its jacket through the wall; a
        heating test scales that loss. Tables of carrying current suppose other surroundings and are not mixed in.
      </p>
      {tests.length > 0 && (
        <div class="wide">
          <table class="small">
            <caption class="hidden">Fits of the heating tests</caption>
            <thead>
              <tr>
                <th scope="col">Cable</th>
                <th scope="col" class="number">
                  A
                </th>
                <th scope="col" class="number">
                  Time constants, s
                </th>
                <th scope="col" class="number">
                  Log, in the slowest
                </th>
                <th scope="col" class="number">
                  Belief in two
                </th>
                <th scope="col" class="number">
                  Still rising, %
                </th>
              </tr>
            </thead>
            <tbody>
              {tests.map(({ name, test }) => (
                <tr key={`${test.specimen} ${test.current_A}`}>
                  <th scope="row">
                    <bdi dir="auto">{name}</bdi>
                  </th>
                  <td class="number">{test.current_A.toFixed(0)}</td>
                  <td class="number">{test.time_constants_s.map((s) => s.toFixed(0)).join(', ') || '—'}</td>
                  <td class="number">{test.lengths?.toFixed(1) ?? '—'}</td>
                  <td class="number">{test.two_belief?.toFixed(2) ?? '—'}</td>
                  <td class="number">{test.still_rising === null ? '—' : (100 * test.still_rising).toFixed(1)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </details>
  );
}
