import '../../styles/placeLead.css';
import '../../styles/amps.css';
import '../../styles/ampsRun.css';
import '../../styles/ampsTest.css';
import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { AssayFrame, useAssay, useOpenSheetInView } from '../../parts/assayFrame.tsx';
import { OPEN_SHEET } from '../../parts/openingCables.tsx';
import { Waiting } from '../../parts/waiting.tsx';
import { ampsOpened } from '../../store/amps/ampsAddress.ts';
import { followAmps } from '../../store/amps/ampsData.ts';
import type { Assay } from '../../store/assay.ts';
import { Amperes } from './amperes.tsx';
import { HeatPlace } from './heat/heatPlace.tsx';
import { LogPlace } from './log/logPlace.tsx';
import { NoAmpsYet } from './noAmpsYet.tsx';
import { RunPlace } from './run/runPlace.tsx';

const TITLES = { run: 'Run check', log: 'Bring a log', heat: 'Heating test' } as const;

/** What each cable does under current, and which of them a run needs. */
export function Amps({ trial, opened }: { trial: string; opened: string | null }) {
  const now = useAssay(trial);
  const findings = now?.findings ?? null;
  useEffect(() => {
    if (now !== null) void followAmps(now);
  }, [now?.entries, findings === null]);
  const open = ampsOpened(opened);
  const act = open.what === 'nothing' || open.what === 'cable' ? null : open.what;
  useEffect(() => {
    if (act !== null) scrollTo(0, 0);
  }, [act]);
  useOpenSheetInView(findings !== null && act === null, `.${OPEN_SHEET}`);
  return (
    <AssayFrame trial={trial} now={now} place="amps" name={act === null ? 'Amps' : TITLES[act]} units={act === null}>
      {findings === null ? <Waiting trial={trial} now={now} /> : shown(now!, findings, open)}
    </AssayFrame>
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
