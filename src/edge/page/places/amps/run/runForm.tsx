import { USUAL_JOINTS } from '../../../../../methods/current/runCheck/question.ts';
import { type AnswerName, TAKEN } from '../../../store/amps/runAnswers.ts';
import { answer, answers, asUnderstood, candidates, overload, startOver } from '../../../store/amps/running.ts';
import { backSizes } from '../../../store/amps/runQuestion.ts';
import { phone } from '../../../store/media.ts';
import { RunChoice, RunField } from './runField.tsx';

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
        <Joints />
      </fieldset>
      {phone.value ? (
        <details>
          <summary>Supply, surroundings, what may be lost</summary>
          <More load={load} />
        </details>
      ) : (
        <More load={load} />
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

/** What most people leave as it is; folded on a phone, so that the answer stays near. */
function More({ load }: { load: string }) {
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

function Joints() {
  const total = USUAL_JOINTS.reduce(
    (sum, _, i) => sum + (Number(answers.value[`joint${i}` as AnswerName].replace(',', '.')) || 0),
    0,
  );
  return (
    <details>
      <summary>
        {total === 0 ? 'No joints' : total === 1 ? '1 joint' : `${total} joints`}, each with its milliohms
      </summary>
      <table class="small joints">
        <thead>
          <tr>
            <th scope="col">Joint</th>
            <th scope="col">How many</th>
            <th scope="col">mΩ each</th>
          </tr>
        </thead>
        <tbody>
          {USUAL_JOINTS.map(({ name, milliohms }, i) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>
                <Cell name={`joint${i}` as AnswerName} label={`How many: ${name}`} placeholder="0" />
              </td>
              <td>
                <Cell name={`ohms${i}` as AnswerName} label={`mΩ each: ${name}`} placeholder={String(milliohms)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="note">The milliohms in grey are what is usually met, half as much either way; type yours over them.</p>
    </details>
  );
}

function Cell({ name, label, placeholder }: { name: AnswerName; label: string; placeholder: string }) {
  return (
    <input
      inputMode="decimal"
      autocomplete="off"
      aria-label={label}
      data-answer={name}
      placeholder={placeholder}
      value={answers.value[name]}
      onInput={(event) => answer({ [name]: event.currentTarget.value })}
    />
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
