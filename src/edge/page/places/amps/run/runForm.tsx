import { answers, asUnderstood, overload, startOver } from '../../../store/amps/running.ts';
import { backSizes } from '../../../store/amps/runQuestion.ts';
import { phone } from '../../../store/media.ts';
import { RunChoice, RunField } from './runField.tsx';
import { RunJoints } from './runJoints.tsx';
import { RunMore } from './runMore.tsx';

const LENGTHS = {
  m: { least: 0.2, most: 12, step: 0.1 },
  ft: { least: 1, most: 40, step: 0.5 },
} as const;
const LOADS = { A: { least: 1, most: 400, step: 1 }, W: { least: 10, most: 5000, step: 10 } } as const;

/** What is asked about the run. Every answer is kept on this device as it is typed. */
export function RunForm() {
  const now = answers.value;
  const load = now.load === 'W' ? 'W' : 'A';
  const unit = now.lengthUnit === 'ft' ? 'ft' : 'm';
  return (
    <form class="run-form" onSubmit={(event) => event.preventDefault()} aria-label="The run">
      <fieldset>
        <legend>Load</legend>
        <div class="two">
          <RunField name="steady" label="Steady" unit={load} slider={LOADS[load]} />
          <RunChoice
            name="load"
            label="Counted in"
            choices={[
              ['A', 'amps'],
              ['W', 'watts'],
            ]}
          />
        </div>
        {load === 'W' && (
          <RunField
            name="efficiency"
            label="Of what it draws, it gives"
            unit="%"
            unknown="90 %, as is common (100 % where the watts are what it draws),"
          />
        )}
        <RunField name="peak" label="At its peak" unit={load} unknown="no peak above the steady load" />
        {now.peak.trim() !== '' && (
          <div class="two">
            <RunField name="peakSeconds" label="A peak lasts" unit="s" unknown="30 s" />
            <RunField name="peakShare" label="Of the time" unit="%" unknown="20 %" />
          </div>
        )}
        <details>
          <summary>
            {now.overload.trim() === ''
              ? 'How long it lasts under an overload'
              : `Under an overload of ${overloadTyped()}`}
          </summary>
          <RunField
            name="overload"
            label="Overload, in one run"
            unit="A"
            unknown="the load at its peak, as if that never ended,"
          />
        </details>
      </fieldset>
      <fieldset>
        <legend>Run</legend>
        <div class="two">
          <RunField name="length" label="Length out" unit={unit} slider={LENGTHS[unit]} />
          <RunChoice
            name="lengthUnit"
            label="Counted in"
            choices={[
              ['m', 'metres'],
              ['ft', 'feet'],
            ]}
          />
        </div>
        <RunChoice
          name="back"
          label="The current comes back by"
          choices={[
            ['same', 'the same cable'],
            ['other', 'another cable'],
            ['body', 'the body of the vehicle'],
          ]}
        />
        {now.back === 'body' ? (
          <RunField
            name="backOhms"
            label="The body, with its two bolts"
            unit="mΩ"
            unknown="0.3 to 5 mΩ, which leaves much open: measure it,"
          />
        ) : (
          <RunField name="backLength" label="Length of the way back" unit={unit} unknown="the length out" />
        )}
        {now.back === 'other' && (
          <RunChoice
            name="backSize"
            label="Copper of the size"
            choices={backSizes().map(({ name }) => [name, name] as const)}
          />
        )}
        <RunJoints />
      </fieldset>
      {phone.value ? (
        <details>
          <summary>Supply, surroundings, what may be lost</summary>
          <RunMore load={load} />
        </details>
      ) : (
        <RunMore load={load} />
      )}
      <p class="buttons">
        <button type="button" class="button" onClick={startOver}>
          Start over
        </button>
      </p>
    </form>
  );
}

/** The overload with its unit; as it was typed where that is no figure. */
const overloadTyped = (): string =>
  Number.isFinite(overload.value ?? Number.NaN)
    ? `${asUnderstood.value.overload.trim()} A`
    : answers.value.overload.trim();
