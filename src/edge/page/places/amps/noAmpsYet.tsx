import { ampsRoute } from '../../store/amps/openInAmps.ts';
import { addressOf } from '../../store/routeOf.ts';

/** What to do where nothing about current is on record. */
export function NoAmpsYet({ trial }: { trial: string }) {
  return (
    <>
      <h1>Nothing under current has been recorded yet.</h1>
      <div class="ways">
        <section>
          <h2>Read the ohms</h2>
          <p>
            Four wires on the whole length, before the first cut: volts and amps at two or three currents, each both
            ways round. With the diameter and the mass they say what the cable carries.
          </p>
          <a class="button main" href={addressOf({ place: 'bench', trial, slate: false })}>
            To the bench
          </a>
        </section>
        <section>
          <h2>Heat one cable</h2>
          <p>
            One test at a steady current sets the heat of all cables on this bench. The steps come with their cautions;
            the logger’s file is brought afterwards.
          </p>
          <p class="buttons">
            <a class="button" href={addressOf(ampsRoute(trial, { what: 'heat' }))}>
              Steps of the test
            </a>
            <a class="button" href={addressOf(ampsRoute(trial, { what: 'log' }))}>
              Bring a log
            </a>
          </p>
        </section>
        <section>
          <h2>Look at a run</h2>
          <p>Volts, heat and fuse for a load and a length. Until cables are measured, with nominal sizes alone.</p>
          <a class="button" href={addressOf(ampsRoute(trial, { what: 'run' }))}>
            Run check
          </a>
        </section>
      </div>
    </>
  );
}
