import { useEffect, useState } from 'preact/hooks';
import { slate } from '../../../../report/labels/slate.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Picture } from '../../parts/picture.tsx';
import { cameraRuns, cameraStopped, filming, take } from '../../store/bench/filming.ts';
import { inHand } from '../../store/bench/inHand.ts';
import { quantityHead, signOf } from '../../store/bench/names.ts';
import { addressOf } from '../../store/routeOf.ts';

/** The filming clock over the whole screen: filmed once, every reading after it has its place in the recording. */
export function Slate({ trial }: { trial: Trial }) {
  const now = useSecond();
  const act = inHand.value;
  const two = (value: number) => String(value).padStart(2, '0');
  const svg = slate(
    {
      trial: trial.title || trial.trial,
      part: '',
      step: act === null ? '' : quantityHead(act.item.quantity),
      code: act === null ? '' : signOf(trial, act.item.specimen),
      take: filming.value ? take.value : take.value + 1,
      timeOfDay: [now.getHours(), now.getMinutes(), now.getSeconds()].map(two).join(':'),
      day: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
    },
    variablesTheme,
  );
  return (
    <main class="slate">
      <h1 class="hidden">Slate</h1>
      <Picture silent svg={svg} />
      <div class="buttons">
        {filming.value ? (
          <button type="button" class="button" onClick={cameraStopped}>
            The camera has stopped
          </button>
        ) : (
          <button type="button" class="button main" onClick={cameraRuns}>
            The camera runs
          </button>
        )}
        <a class="button" href={addressOf({ place: 'bench', trial: trial.trial, slate: false })}>
          Back to the bench
        </a>
      </div>
    </main>
  );
}

/** The present moment, anew every second. */
function useSecond(): Date {
  const [now, setNow] = useState(() => new Date());
  useEffect(() => {
    const timer = setInterval(() => setNow(new Date()), 250);
    return () => clearInterval(timer);
  }, []);
  return now;
}
