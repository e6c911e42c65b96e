import { useEffect, useState } from 'preact/hooks';
import { heating, keepTemperature, setHeating } from '../../../store/amps/heatingRun.ts';
import { soundStop } from '../../../store/amps/stopSound.ts';
import { sentenceOf } from '../../../store/sentenceOf.ts';

/** While current flows: the time, what the thermometer shows, and the stop in large type. Nothing is asked for. */
export function Watching() {
  const run = heating.value;
  const [typed, setTyped] = useState('');
  const [said, setSaid] = useState('');
  const [atStop, setAtStop] = useState('');
  const [trouble, setTrouble] = useState('');
  const keep = async () => {
    if (typed.trim() === '') return;
    try {
      const { celsius, stop } = await keepTemperature(typed);
      setTrouble('');
      setTyped('');
      setSaid(`Kept: ${celsius} °C.`);
      setAtStop(stop ? `${celsius} °C` : '');
      if (stop) soundStop();
    } catch (error) {
      setTrouble(sentenceOf(error));
    }
  };
  return (
    <section class="heat-now" aria-label="The test now">
      <p class="heat-clock">
        <Clock since={Number(run.started)} />
        <span class="unit">
          {' '}
          at {run.current} A, stop at {run.stop} °C
        </span>
      </p>
      {atStop !== '' && (
        <p class="heat-stop" role="alert">
          Stop: {atStop}. Switch off at the switch; this page does not.
        </p>
      )}
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <label for="heat-reads">Thermometer at the strands, °C</label>
        <div class="heat-entry">
          <input
            id="heat-reads"
            inputMode="decimal"
            autocomplete="off"
            value={typed}
            onInput={(event) => setTyped(event.currentTarget.value)}
          />
          <button type="submit" class="button main">
            Keep
          </button>
        </div>
      </form>
      {trouble !== '' && <p role="alert">{trouble}</p>}
      <p class="note" role="status">
        {said}
      </p>
      <p class="buttons">
        <button type="button" class="button" onClick={soundStop}>
          Try the sound
        </button>
        <button type="button" class="button" onClick={() => setHeating({ started: '' })}>
          The current is off
        </button>
      </p>
    </section>
  );
}

function Clock({ since }: { since: number }) {
  const [now, setNow] = useState(Date.now());
  useEffect(() => {
    const tick = setInterval(() => setNow(Date.now()), 1000);
    return () => clearInterval(tick);
  }, []);
  const seconds = Math.max(0, Math.floor((now - since) / 1000));
  return <b role="timer">{`${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`}</b>;
}
