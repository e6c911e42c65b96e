import { TAKEN } from '../../../store/amps/runAnswers.ts';
import { answer, answers, candidates } from '../../../store/amps/running.ts';
import { RunChoice, RunField } from './runField.tsx';

/** What most people leave as it is; folded on a phone, so that the answer stays near. */
export function RunMore({ load }: { load: string }) {
  const now = answers.value;
  return (
    <>
      <fieldset>
        <legend>Supply</legend>
        <RunChoice
          name="source"
          label="Fed from"
          choices={[
            ['battery', 'a battery and what charges it'],
            ['mains', 'the mains'],
          ]}
        />
        <div class="two">
          <RunField name="resting" label="At rest" unit="V" />
          <RunField name="charging" label="Charging" unit="V" unknown="no charging" />
        </div>
        <RunField name="supplyOhms" label="Battery with its clamps" unit="mΩ" unknown="2 to 8 mΩ" />
      </fieldset>
      <fieldset>
        <legend>Around it</legend>
        <RunField
          name="ambient"
          label="Warmest surroundings"
          unit="°C"
          unknown="40 °C"
          slider={{ least: -20, most: 120, step: 1, taken: TAKEN.ambient }}
        />
        <div class="two">
          <RunChoice
            name="layer"
            label="Covered by"
            choices={[
              ['none', 'nothing: open air'],
              ['stated', 'carpet or trim'],
              ['unknown', 'I do not know: 5 mm of carpet'],
            ]}
          />
          <RunChoice
            name="bundle"
            label="Touching, loaded the same"
            choices={[1, 2, 3, 4, 5, 6, 7].map((n) => [String(n), n === 1 ? 'by itself' : `${n} cables`] as const)}
          />
        </div>
        {now.layer === 'stated' && <RunField name="layerThickness" label="Carpet or trim" unit="mm" unknown="5 mm" />}
        <RunChoice
          name="rating"
          label="The jacket bears"
          choices={[
            ['', 'as its label says; I do not know: 60 °C'],
            ...['60', '75', '90', '105', '125', '150'].map((c) => [c, `${c} °C, all of them`] as const),
          ]}
        />
      </fieldset>
      <fieldset>
        <legend>What may be lost</legend>
        <div class="two">
          <RunField
            name="drop"
            label={now.peak.trim() === '' ? 'On the whole way' : 'On the whole way, at the peak'}
            unit={now.dropUnit}
            unknown="0.5 V"
          />
          <RunChoice
            name="dropUnit"
            label="Counted in"
            choices={[
              ['V', 'volts'],
              ['%', 'per cent of the supply'],
            ]}
          />
        </div>
        <MeasuredDrop />
      </fieldset>
      <fieldset>
        <legend>Beside the measured cables</legend>
        <RunChoice
          name="sizes"
          label="Nominal copper sizes"
          choices={[
            ['awg', 'AWG'],
            ['mm2', 'mm²'],
            ['none', 'none'],
          ]}
        />
        <Profile load={load} />
      </fieldset>
    </>
  );
}

function MeasuredDrop() {
  const there = candidates.value;
  return (
    <details>
      <summary>Volts lost under load were measured</summary>
      <p class="note">
        A meter beats this reckoning: with the load on, from the battery’s post to the load’s, plus side and minus side.
      </p>
      <div class="two">
        <RunField name="plus" label="Plus side" unit="V" unknown="0 V" />
        <RunField name="minus" label="Minus side" unit="V" unknown="0 V" />
      </div>
      <RunField name="measuredAt" label="At" unit="A" />
      <RunChoice
        name="installed"
        label="Cable that was there"
        choices={[['', 'none of these, or I do not know'], ...there.map(({ id, name }) => [id, name || id] as const)]}
      />
    </details>
  );
}

function Profile({ load }: { load: string }) {
  return (
    <details>
      <summary>The load changes: paste it</summary>
      <label class="paste">
        Lines of a time and {load === 'W' ? 'watts' : 'amps'}
        <span class="hint">Times in seconds or as 12:30:05; each amount holds until the next line.</span>
        <textarea
          rows={6}
          data-answer="profile"
          spellcheck={false}
          value={answers.value.profile}
          onInput={(event) => answer({ profile: event.currentTarget.value })}
        />
      </label>
    </details>
  );
}
