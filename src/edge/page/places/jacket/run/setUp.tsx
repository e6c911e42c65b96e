import { noBreak } from '../../../../../report/words/noBreak.ts';
import { Trouble } from '../../../parts/trouble.tsx';
import { roomUnit } from '../../../store/bench/room.ts';
import { begin, chooseTest, protocolNow, runTrouble, setUp } from '../../../store/jacket/running.ts';
import type { Run, Way } from '../../../store/jacket/runState.ts';
import { Steps } from './steps.tsx';

/** What to build and do, and what is the same for all pieces; afterwards nothing more is asked while a piece is worked on. */
export function SetUp({ run }: { run: Run }) {
  const protocol = protocolNow.value;
  return (
    <form
      class="set-up"
      onSubmit={(event) => {
        event.preventDefault();
        begin();
      }}
    >
      <h1>{protocol === null ? 'A test of your own' : protocol.asks}</h1>
      <div class="set-up-columns">
        {protocol !== null && (
          <section aria-label="What to build and do">
            <h2>What it takes</h2>
            <ul class="apparatus">
              {protocol.apparatus.map((thing) => (
                <li key={thing}>{noBreak(thing)}</li>
              ))}
            </ul>
            <h2>Steps</h2>
            <Steps protocol={protocol} />
          </section>
        )}
        <section class="same-for-all" aria-label="The same for all pieces">
          <h2>The same for all pieces</h2>
          <Fields run={run} />
          <Trouble>{runTrouble.value}</Trouble>
          <div class="buttons">
            <button type="submit" class="button main">
              Take the first piece
            </button>
            <button type="button" class="button" onClick={() => chooseTest('none')}>
              Another test
            </button>
          </div>
          {protocol !== null && <p class="note">What is written down: {noBreak(lowerFirst(protocol.record))}</p>}
        </section>
      </div>
    </form>
  );
}

const lowerFirst = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);

/** Ways of one's own test, with the unit that each begins with. */
const WAYS: readonly (readonly [Way, string, string])[] = [
  ['strokes', 'strokes', 'counted here, stroke by stroke'],
  ['timer', 's', 'timed here, in seconds'],
  ['typed', 'N', 'read off a tool'],
  ['once', 'h', 'one exposure, the same for all: came through or not'],
];

const EXPOSURE: Readonly<Record<string, string>> = {
  h: 'Hours for every piece',
  bends: 'Bends for every piece',
};

function Fields({ run }: { run: Run }) {
  const protocol = protocolNow.value;
  const own = protocol === null;
  const load = protocol === null ? { what: 'Load, if there is one', unit: run.stressUnit || 'N' } : protocol.stress;
  return (
    <>
      <Written id="run-test" label="Name, as it will be listed" value={run.test} onType={(test) => setUp({ test })} />
      {protocol?.name === 'fluid' && (
        <p class="note">Name the fluid too, such as “fluid: diesel”: every fluid is a test of its own.</p>
      )}
      {protocol?.name === 'sandpaper' && <p class="note">The grit can stand behind it: “sandpaper 150”.</p>}
      {own && (
        <p class="written">
          <label for="run-way">How much it took is</label>
          <select
            id="run-way"
            value={run.way}
            onChange={(event) => {
              const [way, unit] = WAYS.find(([each]) => each === event.currentTarget.value)!;
              setUp({ way, unit });
            }}
          >
            {WAYS.map(([way, , words]) => (
              <option key={way} value={way}>
                {words}
              </option>
            ))}
          </select>
        </p>
      )}
      {own && run.way !== 'timer' && (
        <Written id="run-unit" label="Unit" value={run.unit} onType={(unit) => setUp({ unit })} />
      )}
      {run.way === 'once' && (
        <Written
          id="run-exposure"
          label={EXPOSURE[run.unit] ?? `How much for every piece, ${run.unit}`}
          number
          value={run.exposure}
          onType={(exposure) => setUp({ exposure })}
        />
      )}
      {load !== null && (
        <Written
          id="run-stress"
          label={`${load.what}, ${load.unit === 'C' ? '°C' : load.unit}`}
          number
          value={run.stress}
          onType={(stress) => setUp({ stress, stressUnit: load.unit })}
        />
      )}
      {run.way === 'strokes' && (
        <Written
          id="run-every"
          label={`Looked at every so many ${run.unit}; blank: at each`}
          number
          value={run.every}
          onType={(every) => setUp({ every })}
        />
      )}
      {run.way !== 'once' && (
        <Written
          id="run-stop"
          label={`Ended at, ${run.unit}; blank: when copper shows`}
          number
          value={run.stopAt}
          onType={(stopAt) => setUp({ stopAt })}
        />
      )}
      <Written
        id="run-room"
        label={`Temperature of the pieces, °${roomUnit.value}`}
        number
        value={run.temperature}
        onType={(temperature) => setUp({ temperature })}
      />
    </>
  );
}

interface WrittenProps {
  id: string;
  label: string;
  value: string;
  onType: (text: string) => void;
  number?: boolean;
}

function Written({ id, label, value, onType, number = false }: WrittenProps) {
  return (
    <p class="written">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode={number ? 'decimal' : 'text'}
        autocomplete="off"
        value={value}
        onInput={(event) => onType(event.currentTarget.value)}
      />
    </p>
  );
}
