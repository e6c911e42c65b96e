import '../../styles/placeLead.css';
import '../../styles/jacket.css';
import '../../styles/jacketRun.css';
import { AssayFrame, useAssay, useOpenSheetInView } from '../../parts/assayFrame.tsx';
import { JournalFrame } from '../../parts/journalFrame.tsx';
import { OPEN_SHEET } from '../../parts/openingCables.tsx';
import { Waiting } from '../../parts/waiting.tsx';
import { jacketOpened } from '../../store/jacket/jacketAddress.ts';
import { Jackets } from './jackets.tsx';
import { NoJacketYet } from './noJacketYet.tsx';
import { RunPlace } from './run/runPlace.tsx';

/** What each jacket is, and what its pieces lasted. */
export function JacketPlace({ trial, opened }: { trial: string; opened: string | null }) {
  const open = jacketOpened(opened);
  if (open.what === 'run')
    return (
      <JournalFrame trial={trial} place="jacket" name="Run a test">
        <RunPlace trial={trial} />
      </JournalFrame>
    );
  return <Looking trial={trial} cable={open.what === 'cable' ? open.cable : null} />;
}

function Looking({ trial, cable }: { trial: string; cable: string | null }) {
  const now = useAssay(trial);
  const findings = now?.findings ?? null;
  useOpenSheetInView(findings !== null, `.${OPEN_SHEET}`);
  return (
    <AssayFrame trial={trial} now={now} place="jacket" name="Jacket">
      {findings === null ? (
        <Waiting trial={trial} now={now} />
      ) : findings.jacket === null ? (
        <NoJacketYet trial={trial} />
      ) : (
        <Jackets trial={trial} findings={findings} jacket={findings.jacket} open={cable} />
      )}
    </AssayFrame>
  );
}
