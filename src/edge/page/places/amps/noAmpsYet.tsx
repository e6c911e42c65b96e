import { WaysToBegin } from '../../parts/waysToBegin.tsx';
import { ampsRoute } from '../../store/amps/openInAmps.ts';
import { addressOf } from '../../store/routeOf.ts';

/** What to do where nothing about current is on record. */
export function NoAmpsYet({ trial }: { trial: string }) {
  const to = (what: 'heat' | 'log' | 'run') => addressOf(ampsRoute(trial, { what }));
  return (
    <WaysToBegin
      sentence="Nothing under current has been recorded yet."
      ways={[
        {
          title: 'Read the ohms',
          text: 'Four wires on the whole length, before the first cut: volts and amps at two or three currents, each both ways round. With the diameter and the mass they say what the cable carries.',
          links: [['To the bench', addressOf({ place: 'bench', trial, slate: false })]],
        },
        {
          title: 'Heat one cable',
          text: 'One test at a steady current sets the heat of all cables on this bench. The steps come with their cautions; the logger’s file is brought afterwards.',
          links: [
            ['Steps of the test', to('heat')],
            ['Bring a log', to('log')],
          ],
        },
        {
          title: 'Look at a run',
          text: 'Volts, heat and fuse for a load and a length. Until cables are measured, with nominal sizes alone.',
          links: [['Run check', to('run')]],
        },
      ]}
    />
  );
}
