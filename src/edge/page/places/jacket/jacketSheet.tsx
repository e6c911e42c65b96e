import type { Findings } from '../../../../findings/schema.ts';
import type { Jacket, JacketCable } from '../../../../findings/shapes/jacket.ts';
import { hourText } from '../../../../report/jacket/wallTrace.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';

interface SheetProps {
  cable: JacketCable;
  jacket: Jacket;
  findings: Findings;
}

/** What one jacket's figures lean on: readings, cross-check, density with its hints, context, and what its pieces did. */
export function JacketSheet({ cable, jacket, findings }: SheetProps) {
  return (
    <div class="sheet jacket-sheet">
      {cable.sentence !== '' && <p class="said">{noBreak(cable.sentence)}</p>}
      <div class="columns">
        <div>
          <Wall cable={cable} />
        </div>
        <div>
          <Stuff cable={cable} />
          <Context cable={cable} size={findings.cables.find((c) => c.cable === cable.cable)?.label.size ?? ''} />
        </div>
        <div>
          <Lasted cable={cable.cable} jacket={jacket} />
        </div>
      </div>
    </div>
  );
}

function Wall({ cable }: { cable: JacketCable }) {
  const { round, off_centre: off, out_of_round: oval, cross_check: check } = cable;
  return (
    <section>
      <h3>Wall</h3>
      {round.length === 0 ? (
        <p class="note">The face was not read: the wall comes from the diameters alone, which show no thin place.</p>
      ) : (
        <table class="small walls">
          <caption class="hidden">Readings round the face</caption>
          <thead>
            <tr>
              <th scope="col">Place</th>
              <th scope="col" class="number">
                mm
              </th>
            </tr>
          </thead>
          <tbody>
            {round.map((r) => (
              <tr key={r.reading}>
                <th scope="row">
                  <bdi dir="auto">{r.position || 'not noted'}</bdi>
                </th>
                <td class="number">{r.thickness_mm.toFixed(2)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {off !== null && (
        <p>
          {noBreak(
            `The bundle sits ${off.distance_mm.toFixed(2)} mm off the middle; the wall is thinnest towards ${hourText(off.thinnest_at_degrees)}.`,
          )}
        </p>
      )}
      {oval !== null && <p>{noBreak(`The outside is ${(100 * oval).toFixed(1)} % out of round.`)}</p>}
      {check !== null && (
        <p class={check.agrees ? 'note' : ''}>{check.agrees ? noBreak(check.text) : <b>{noBreak(check.text)}</b>}</p>
      )}
    </section>
  );
}

function Stuff({ cable }: { cable: JacketCable }) {
  return (
    <section>
      <h3>What it may be</h3>
      {cable.density === null && cable.wall_doubt !== '' ? (
        <p class="note">Its density by the diameters is held back with its wall.</p>
      ) : cable.density === null ? (
        <p class="note">
          Its density takes the jacket’s mass and length with both diameters or the wall, or the jacket weighed in air
          and under water.
        </p>
      ) : (
        <>
          <p>{noBreak(cable.hint_text)}</p>
          {cable.density_by !== null && <p class="note">By {cable.density_by}.</p>}
        </>
      )}
    </section>
  );
}

function Context({ cable, size }: { cable: JacketCable; size: string }) {
  if (cable.context.length === 0) return null;
  return (
    <section>
      <h3>
        For comparison, at <bdi dir="auto">{size || 'the claimed size'}</bdi>
      </h3>
      {cable.context.map(({ standard, text }) => (
        <p key={standard} class="note">
          {noBreak(text)} <span class="source">{standard}.</span>
        </p>
      ))}
    </section>
  );
}

function Lasted({ cable, jacket }: { cable: string; jacket: Jacket }) {
  const tests = jacket.endurance.flatMap((test) => {
    const own = test.cables.find((c) => c.cable === cable);
    return own ? [{ test, own }] : [];
  });
  const changes = jacket.exposures.filter((e) => e.cable === cable && e.text !== '');
  return (
    <section>
      <h3>What its pieces did</h3>
      {tests.length === 0 && changes.length === 0 && <p class="note">No piece of it was tested yet.</p>}
      {tests.map(({ test, own }) => (
        <p key={`${test.test} ${test.stress} ${test.exposure}`}>
          <b>
            <bdi dir="auto">{test.test}</bdi>:
          </b>{' '}
          {noBreak(own.text)}
        </p>
      ))}
      {changes.map(({ exposure, text }) => (
        <p key={exposure}>{noBreak(text)}</p>
      ))}
    </section>
  );
}
