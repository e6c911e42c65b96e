import type { Current } from '../../../../findings/shapes/current.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { HowFold } from '../../parts/howFold.tsx';

/** The physics and statistics behind the place, for those who want them. */
export function HowWeKnowAmps({ current }: { current: Current }) {
  const tests = current.cables.flatMap((c) => c.heating_tests.map((test) => ({ name: c.name || c.cable, test })));
  return (
    <HowFold>
      <p>
        Ohms by four wires are the slope of volts over amps, so that what two warm metals make by themselves stays in
        the intercept. A heating is fitted by one and by two exponentials under several suppositions about scatter and
        drift, weighed by restricted likelihood; it is answered only from logs of two time constants, or three of the
        slower, and where the end is known to 10 %. What a cable carries is where its own heat, growing with the
        temperature, equals what still air (Churchill and Chu) and radiation take from its jacket through the wall; a
        heating test scales that loss. Tables of carrying current suppose other surroundings and are not mixed in.
      </p>
      {tests.length > 0 && (
        <ul class="plain">
          {tests.map(({ name, test }) => (
            <li key={`${test.specimen} ${test.current_A}`}>
              <bdi dir="auto">{name}</bdi>, {fitText(test)}
            </li>
          ))}
        </ul>
      )}
    </HowFold>
  );
}

function fitText(test: Current['cables'][number]['heating_tests'][number]): string {
  const constants = test.time_constants_s.map((s) => s.toFixed(0)).join(' and ');
  const parts = [
    `${test.current_A.toFixed(0)} A`,
    constants === '' ? '' : `time constants ${constants} s`,
    test.lengths === null ? '' : `a log of ${test.lengths.toFixed(1)} times the slowest`,
    test.two_belief === null ? '' : `belief that two are needed ${test.two_belief.toFixed(2)}`,
    test.still_rising === null ? '' : `still rising by ${(100 * test.still_rising).toFixed(1)} %`,
  ];
  return noBreak(`${parts.filter((part) => part !== '').join(', ')}.`);
}
