import '../../styles/bend.css';
import '../../styles/jacket.css';
import '../../styles/amps.css';
import '../../styles/ampsRun.css';
import '../../styles/ampsTest.css';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { Frame } from '../../parts/frame.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { ampsOpened } from '../../store/amps/ampsAddress.ts';
import { followAmps } from '../../store/amps/ampsData.ts';
import { type Assay, assay, followTrial } from '../../store/assay.ts';
import { NothingToSay } from '../inside/nothingToSay.tsx';
import { Working } from '../inside/working.tsx';
import { Amperes } from './amperes.tsx';
import { HeatPlace } from './heat/heatPlace.tsx';
import { LogPlace } from './log/logPlace.tsx';
import { NoAmpsYet } from './noAmpsYet.tsx';
import { RunPlace } from './run/runPlace.tsx';

const TITLES = { run: 'Run check', log: 'Bring a log', heat: 'Heating test' } as const;

/** What each cable does under current, and which of them a run needs. */
export function Amps({ trial, opened }: { trial: string; opened: string | null }) {
  useEffect(() => followTrial(trial), [trial]);
  const now = assay.value?.trial === trial ? assay.value : null;
  const findings = now?.findings ?? null;
  useEffect(() => {
    if (now !== null) void followAmps(now);
  }, [now?.entries, findings === null]);
  const open = ampsOpened(opened);
  const act = open.what === 'nothing' || open.what === 'cable' ? null : open.what;
  useEffect(() => {
    if (act !== null) scrollTo(0, 0);
    else if (findings !== null && scrollY === 0)
      document.querySelector('.amps-open')?.scrollIntoView({ block: 'nearest' });
  }, [findings === null, act]);
  const called = findings?.title || trial;
  return (
    <Frame
      title={`${act === null ? 'Amps' : TITLES[act]}, ${called}`}
      places={trialPlaces(trial, 'amps')}
      trial={now?.stage === 'failed' ? undefined : { title: called, place: now?.place ?? '' }}
      units={act === null}
      compact
    >
      {findings === null ? <Waiting trial={trial} now={now} /> : shown(now!, findings, open)}
    </Frame>
  );
}

function shown(
  now: Assay,
  findings: NonNullable<Assay['findings']>,
  open: ReturnType<typeof ampsOpened>,
): ComponentChildren {
  const { trial } = now;
  if (open.what === 'run') return <RunPlace trial={trial} />;
  if (open.what === 'log') return <LogPlace trial={trial} findings={findings} />;
  if (open.what === 'heat') return <HeatPlace trial={trial} />;
  if (findings.current === null) return <NoAmpsYet trial={trial} />;
  const cable = open.what === 'cable' ? open.cable : null;
  return <Amperes trial={trial} findings={findings} current={findings.current} open={cable} />;
}

function Waiting({ trial, now }: { trial: string; now: Assay | null }) {
  if (now?.stage === 'failed') return <NothingToSay trial={trial} sentence={now.sentence} />;
  return (
    <>
      <h1>Reading the trial.</h1>
      {now !== null && <Working now={now} />}
    </>
  );
}
