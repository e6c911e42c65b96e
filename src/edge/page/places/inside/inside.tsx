import { useEffect } from 'preact/hooks';
import type { Findings } from '../../../../findings/schema.ts';
import { Frame } from '../../parts/frame.tsx';
import type { PlaceOnRuler } from '../../parts/places.tsx';
import { type Assay, assay, openTrial } from '../../store/assay.ts';
import { narrow } from '../../store/media.ts';
import { addressOf } from '../../store/routeOf.ts';
import { CableBlocks } from './cableBlocks.tsx';
import { CableTable } from './cableTable.tsx';
import { ControlPiece } from './controlPiece.tsx';
import { HowWeKnow } from './howWeKnow.tsx';
import { openCables, openOnly } from './openCables.ts';
import { Sections } from './sections.tsx';
import { TakeAway } from './takeAway.tsx';
import { Warnings } from './warnings.tsx';
import { Working } from './working.tsx';

/** What is inside each cable of a trial, against its label. */
export function Inside({ trial, cable }: { trial: string; cable: string | null }) {
  useEffect(() => {
    openOnly(cable);
  }, [trial, cable]);
  useEffect(() => {
    void openTrial(trial);
  }, [trial]);
  const now = assay.value?.trial === trial ? assay.value : null;
  const findings = now?.findings ?? null;
  useEffect(() => {
    if (findings !== null && scrollY === 0) document.querySelector('.open')?.scrollIntoView({ block: 'nearest' });
  }, [findings === null]);
  return (
    <Frame
      title={findings?.title || trial}
      places={places(trial, findings)}
      trial={{ title: findings?.title || trial, place: now?.place ?? '' }}
      units
    >
      {findings === null ? <Waiting now={now} /> : <Found now={now!} findings={findings} />}
    </Frame>
  );
}

function Waiting({ now }: { now: Assay | null }) {
  if (now?.stage === 'failed') {
    return (
      <>
        <h1>Nothing can be said about this trial yet.</h1>
        <p class="trouble-sentence" role="alert">
          {now.sentence}
        </p>
        <a href="/">Back to the shelf</a>
      </>
    );
  }
  return (
    <>
      <h1>Reading the trial.</h1>
      {now !== null && <Working now={now} />}
    </>
  );
}

function Found({ now, findings }: { now: Assay; findings: Findings }) {
  const cables = findings.cables.filter((cable) => cable.role !== 'control');
  const open = openCables.value;
  return (
    <>
      <h1>{findings.sentence}</h1>
      <ControlPiece findings={findings} />
      {cables.length === 0 ? (
        <p>
          No cable has been described yet. Add a row for each to cables.csv, then bring the folder in on the shelf
          again.
        </p>
      ) : (
        <>
          <Sections cables={cables}>
            <Working now={now} />
          </Sections>
          <h2 class="hidden">Cable by cable</h2>
          {narrow.value ? (
            <CableBlocks findings={findings} cables={cables} readings={now.readings} open={open} />
          ) : (
            <CableTable findings={findings} cables={cables} readings={now.readings} open={open} />
          )}
        </>
      )}
      <Warnings findings={findings} />
      <HowWeKnow findings={findings} entries={now.entries.length} />
      <TakeAway now={now} />
    </>
  );
}

function places(trial: string, findings: Findings | null): PlaceOnRuler[] {
  const count = findings?.cables.filter((cable) => cable.role === 'compared').length ?? 0;
  const state = findings === null ? '' : count === 1 ? '1 cable' : `${count} cables`;
  return [
    { name: 'Shelf', href: '/', here: false, state: '' },
    { name: 'Inside', href: addressOf({ place: 'inside', trial, cable: null }), here: true, state },
  ];
}
