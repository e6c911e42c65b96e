import { useEffect } from 'preact/hooks';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { Frame } from '../../parts/frame.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { assay, followTrial } from '../../store/assay.ts';

/** How easily each cable bends: by the table's edge, by the scale, and by hand. */
export function Bend({ trial }: { trial: string; opened: string | null }) {
  useEffect(() => followTrial(trial), [trial]);
  const now = assay.value?.trial === trial ? assay.value : null;
  const findings = now?.findings ?? null;
  return (
    <Frame
      title={`Bend, ${findings?.title || trial}`}
      places={trialPlaces(trial, 'bend')}
      trial={now?.stage === 'failed' ? undefined : { title: findings?.title || trial, place: now?.place ?? '' }}
      units
      compact
    >
      <h1>{noBreak(findings?.flex?.sentence ?? 'Nothing about bending has been recorded yet.')}</h1>
    </Frame>
  );
}
