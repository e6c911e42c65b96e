import type { Trial } from '../../../../trial/trial.ts';
import { cameraStopped, filming, footage, nameFootage, take, timecodeTyped } from '../../store/bench/filming.ts';
import { beeps, speaks } from '../../store/bench/said.ts';
import { deviceName, nameRecorder, recorder } from '../../store/journal/device.ts';
import { addressOf } from '../../store/routeOf.ts';

/** Who records and on what, what the bench says aloud, and the filming clock. */
export function ThisBench({ trial }: { trial: Trial }) {
  return (
    <details class="this-bench">
      <summary>
        <h2>This bench</h2>
        <span class="note">who records, sound, filming</span>
      </summary>
      <div class="choices">
        <Text id="recorder" label="Who records" value={recorder.value} onType={nameRecorder} />
        <p class="note">This device goes by {deviceName()} in the journal.</p>
        <Tick
          label="A short tone when a reading is kept"
          on={beeps.value}
          onTurn={(on) => {
            beeps.value = on;
          }}
        />
        <Tick
          label="Say aloud what was kept"
          on={speaks.value}
          onTurn={(on) => {
            speaks.value = on;
          }}
        />
      </div>
      <div class="choices">
        <p>
          <a href={addressOf({ place: 'bench', trial: trial.trial, slate: true })}>Slate for the camera</a>
          {filming.value
            ? `: take ${take.value} runs, and every entry gets its place in it.`
            : ': film it once, and every entry after it has its place in the recording.'}
        </p>
        {filming.value && (
          <button type="button" class="link" onClick={cameraStopped}>
            The camera has stopped
          </button>
        )}
        <Text id="footage" label="Name of the recording" value={footage.value} onType={nameFootage} />
        <Text
          id="timecode"
          label="Read from the recording, at"
          hint="12:31, for the next reading"
          value={timecodeTyped.value}
          onType={(text) => {
            timecodeTyped.value = text;
          }}
        />
      </div>
    </details>
  );
}

interface TextProps {
  id: string;
  label: string;
  hint?: string;
  value: string;
  onType: (text: string) => void;
}

function Text({ id, label, hint, value, onType }: TextProps) {
  return (
    <p class="small-field">
      <label for={`bench-${id}`}>{label}</label>
      <input
        id={`bench-${id}`}
        class="wide"
        type="text"
        value={value}
        autocomplete="off"
        placeholder={hint}
        onInput={(event) => onType(event.currentTarget.value)}
      />
    </p>
  );
}

function Tick({ label, on, onTurn }: { label: string; on: boolean; onTurn: (on: boolean) => void }) {
  return (
    <label class="turn-on">
      <input type="checkbox" checked={on} onChange={(event) => onTurn(event.currentTarget.checked)} />
      {label}
    </label>
  );
}
