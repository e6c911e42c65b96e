import { useEffect, useRef, useState } from 'preact/hooks';
import {
  count,
  figureTyped,
  lookNow,
  runTrouble,
  startOrStop,
  takeBackCount,
  testLonger,
} from '../../../store/jacket/running.ts';
import { atStop, clockAmount, elapsed, type Run, strokes } from '../../../store/jacket/runState.ts';
import { handheld } from '../../../store/media.ts';

/** Where the amount comes from: a count, a clock, a field, or nothing but the exposure. */
export function Counter({ run }: { run: Run }) {
  if (run.way === 'strokes') return <Strokes run={run} />;
  if (run.way === 'typed') return <FigureField run={run} />;
  if (run.way === 'timer' || run.unit === 'h') return <Clock run={run} />;
  return (
    <p class="count-line">
      {run.exposure} {run.exposure === '1' ? run.unit.replace(/s$/, '') : run.unit}, then look.
    </p>
  );
}

/** A finger leaves the focus where it is, so that a pedal goes on counting by ones. */
const keepFocus = (event: MouseEvent) => event.preventDefault();

function Strokes({ run }: { run: Run }) {
  const one = useRef<HTMLButtonElement>(null);
  useEffect(() => one.current?.focus({ preventScroll: true }), []);
  const now = strokes(run);
  const look = lookNow.value;
  const ended = atStop(run, now);
  return (
    <>
      <p class="count">
        <b>{now}</b> <span>{run.unit}</span>
      </p>
      <p class="count-line" data-call={look !== null || atStop(run, now) ? 'yes' : undefined}>
        {atStop(run, now)
          ? `${run.stopAt}: ended. Survived?`
          : look !== null
            ? `Look now, at ${look}.`
            : nextLook(run, now)}
      </p>
      <div class="count-keys">
        <button ref={one} type="button" class="button one" onMouseDown={keepFocus} onClick={() => count(1)}>
          +1
        </button>
        <button type="button" class="button ten" onMouseDown={keepFocus} onClick={() => count(10)}>
          +10
        </button>
        <button
          type="button"
          class="button back"
          onMouseDown={keepFocus}
          onClick={takeBackCount}
          disabled={run.steps.length === 0}
        >
          Undo
        </button>
      </div>
      {ended && (
        <p class="note">
          The end is the same for all pieces, so the count stops there.{' '}
          <button type="button" class="link" onClick={testLonger}>
            Test longer, until copper shows
          </button>
        </p>
      )}
    </>
  );
}

function nextLook(run: Run, now: number): string {
  const every = Number(run.every);
  if (!(every > 0)) return 'Watch for copper at every stroke.';
  return `Look at ${(Math.floor(now / every) + 1) * every}.`;
}

const TICK_MS = 100;

function Clock({ run }: { run: Run }) {
  const [, tick] = useState(0);
  const runs = run.startedAt !== 0;
  useEffect(() => {
    if (!runs) return;
    const timer = setInterval(() => tick((n) => n + 1), TICK_MS);
    return () => clearInterval(timer);
  }, [runs]);
  const now = Date.now();
  const amount = clockAmount(run, now);
  return (
    <>
      <p class="count clock">
        <b>{clockText(elapsed(run, now), run.unit)}</b> <span>{run.unit === 'h' ? 'h:min:s' : run.unit}</span>
      </p>
      <p class="count-line" data-call={atStop(run, amount) ? 'yes' : undefined}>
        {run.way === 'once'
          ? `${run.exposure} ${run.unit} for every piece. The clock runs on while this page is closed; it switches nothing off.`
          : atStop(run, amount)
            ? `The test ends at ${run.stopAt} ${run.unit}. If no copper shows, it survived.`
            : 'The clock switches nothing off.'}
      </p>
      <div class="count-keys">
        <button type="button" class="button one" onMouseDown={keepFocus} onClick={startOrStop}>
          {runs ? 'Stop the clock' : run.ran > 0 ? 'Go on' : 'Start the clock'}
        </button>
      </div>
    </>
  );
}

const two = (n: number) => String(n).padStart(2, '0');

/** `12.3` seconds, or `3:07:09` hours. */
function clockText(ms: number, unit: string): string {
  if (unit !== 'h') return (ms / 1000).toFixed(1);
  const seconds = Math.floor(ms / 1000);
  return `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}

function FigureField({ run }: { run: Run }) {
  return (
    <>
      <p class="run-figure">
        <label for="run-figure">Greatest figure until then, {run.unit}</label>
        <input
          id="run-figure"
          type="text"
          inputMode={handheld.value ? 'decimal' : 'text'}
          autocomplete="off"
          aria-invalid={runTrouble.value !== ''}
          value={figureTyped.value}
          onInput={(event) => {
            figureTyped.value = event.currentTarget.value;
            runTrouble.value = '';
          }}
        />
      </p>
      {run.unit === 'N' && (
        <p class="note">
          A scale’s figure can be typed as it stands: “8.4 kgf” or “900 gf”. Type it once the piece is out.
        </p>
      )}
    </>
  );
}
