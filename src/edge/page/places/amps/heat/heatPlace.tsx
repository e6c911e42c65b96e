import { useState } from 'preact/hooks';
import { Minds } from '../../../parts/mind.tsx';
import { StepList } from '../../../parts/stepList.tsx';
import { heating, heatTrial, setHeating, switchOn } from '../../../store/amps/heatingRun.ts';
import { missingBefore } from '../../../store/amps/heatingStop.ts';
import { ampsRoute } from '../../../store/amps/openInAmps.ts';
import { folded } from '../../../store/journal/journal.ts';
import { addressOf } from '../../../store/routeOf.ts';
import { PieceChoice } from '../log/pieceChoice.tsx';
import { FURTHER_CAUTIONS, HEAT_STEPS } from './steps.ts';
import { Watching } from './watching.tsx';

/** A heating test at the bench: what to build and to heed, the stop chosen before the start, and readings by hand where no logger is. */
export function HeatPlace({ trial }: { trial: string }) {
  heatTrial.value = trial;
  const run = heating.value;
  return (
    <article class="heat-place">
      <header class="amps-lead">
        <h1>{run.started === '' ? 'Heat one cable at a steady current.' : 'The current is on.'}</h1>
        <p class="buttons">
          <a class="button" href={addressOf(ampsRoute(trial, { what: 'log' }))}>
            Bring a log
          </a>
          <a class="button" href={addressOf(ampsRoute(trial, { what: 'nothing' }))}>
            Back to Amps
          </a>
        </p>
      </header>
      <div class="heat-columns">
        {run.started === '' ? <SetUp /> : <Watching />}
        <section class="heat-steps" aria-labelledby="heat-steps">
          <h2 id="heat-steps">Steps</h2>
          <StepList steps={HEAT_STEPS} />
          <Minds texts={FURTHER_CAUTIONS} />
        </section>
      </div>
    </article>
  );
}

function SetUp() {
  const run = heating.value;
  const trial = folded.value;
  const [asked, setAsked] = useState(false);
  const missing = missingBefore(run);
  if (trial === null) return null;
  return (
    <section class="heat-set-up" aria-labelledby="heat-set-up">
      <h2 id="heat-set-up">Before you switch on</h2>
      <PieceChoice
        trial={trial}
        id="heat-piece"
        value={run.specimen}
        onChoose={(specimen) => setHeating({ specimen })}
      />
      <Entry name="current" label="Current, A" />
      <Entry name="ambient" label="Surroundings, °C" unknown />
      <Entry name="stop" label="Stop at, °C" />
      <p class="note">
        At the stop this page sounds and says so. It does not switch off: your hand does, at the switch.
      </p>
      {asked && missing.length > 0 && <p role="alert">Missing: {missing.join('; ')}.</p>}
      <p>
        <button
          type="button"
          class="button main"
          onClick={() => {
            if (missing.length > 0) setAsked(true);
            else switchOn();
          }}
        >
          The current is on
        </button>
      </p>
      <p class="note">
        With a logger this is not needed: go by the steps, and bring its file. By hand, type what the thermometer shows;
        each is kept with its time.
      </p>
    </section>
  );
}

function Entry({
  name,
  label,
  unknown = false,
}: {
  name: 'current' | 'ambient' | 'stop';
  label: string;
  unknown?: boolean;
}) {
  return (
    <div class="edit">
      <label for={`heat-${name}`}>{label}</label>
      <input
        id={`heat-${name}`}
        inputMode="decimal"
        autocomplete="off"
        placeholder={unknown ? 'I do not know' : ''}
        value={heating.value[name]}
        onInput={(event) => setHeating({ [name]: event.currentTarget.value })}
      />
    </div>
  );
}
