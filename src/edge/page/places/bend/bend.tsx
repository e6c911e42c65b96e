import '../../styles/placeLead.css';
import '../../styles/bend.css';
import '../../styles/judge.css';
import '../../styles/photoMarks.css';
import { AssayFrame, useAssay, useOpenSheetInView } from '../../parts/assayFrame.tsx';
import { JournalFrame } from '../../parts/journalFrame.tsx';
import { OPEN_SHEET } from '../../parts/openingCables.tsx';
import { Waiting } from '../../parts/waiting.tsx';
import { bendOpened } from '../../store/bend/bendAddress.ts';
import { Bending } from './bending.tsx';
import { JudgePlace } from './judge/judgePlace.tsx';
import { NoBendingYet } from './noBendingYet.tsx';
import { PhotoPlace } from './photo/photoPlace.tsx';

/** How easily each cable bends: by the table's edge, by the scale, and by hand. */
export function Bend({ trial, opened }: { trial: string; opened: string | null }) {
  const open = bendOpened(opened);
  if (open.what === 'judge')
    return (
      <JournalFrame trial={trial} place="bend" name="Judge pairs">
        <JudgePlace trial={trial} />
      </JournalFrame>
    );
  if (open.what === 'photo')
    return (
      <JournalFrame trial={trial} place="bend" name="Droop in a photo">
        <PhotoPlace trial={trial} note={open.note} />
      </JournalFrame>
    );
  return <Looking trial={trial} cable={open.what === 'cable' ? open.cable : null} />;
}

function Looking({ trial, cable }: { trial: string; cable: string | null }) {
  const now = useAssay(trial);
  const findings = now?.findings ?? null;
  useOpenSheetInView(findings !== null, `.${OPEN_SHEET}`);
  return (
    <AssayFrame trial={trial} now={now} place="bend" name="Bend">
      {findings === null ? (
        <Waiting trial={trial} now={now} />
      ) : findings.flex === null ? (
        <NoBendingYet trial={trial} />
      ) : (
        <Bending now={now!} findings={findings} flex={findings.flex} open={cable} />
      )}
    </AssayFrame>
  );
}
