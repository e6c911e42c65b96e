import { useEffect } from 'preact/hooks';
import type { Findings } from '../../../../findings/schema.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { AssayFrame, useAssay, useOpenSheetInView } from '../../parts/assayFrame.tsx';
import { Waiting } from '../../parts/waiting.tsx';
import { Working } from '../../parts/working.tsx';
import type { Assay } from '../../store/assay.ts';
import { narrow } from '../../store/media.ts';
import { route } from '../../store/route.ts';
import { CableBlocks } from './cableBlocks.tsx';
import { CableTable } from './cableTable.tsx';
import { ControlPiece } from './controlPiece.tsx';
import { HowWeKnow } from './howWeKnow.tsx';
import { openAsNoted, openCables } from './openCables.ts';
import { Sections } from './sections.tsx';
import { TakeAway } from './takeAway.tsx';
import { Warnings } from './warnings.tsx';

/** The row or the block whose sheet is open. */
const OPEN_SHEET = '.cables tr.open, .blocks > li.open';

/** What is inside each cable of a trial, against its label. */
export function Inside({ trial, cable }: { trial: string; cable: string | null }) {
  const here = route.value;
  useEffect(() => openAsNoted(cable), [here]);
  const now = useAssay(trial);
  const findings = now?.findings ?? null;
  useOpenSheetInView(findings !== null, OPEN_SHEET);
  return (
    <AssayFrame trial={trial} now={now} place="inside" name="" compact={false}>
      {findings === null ? <Waiting trial={trial} now={now} /> : <Found now={now!} findings={findings} />}
    </AssayFrame>
  );
}

/** What was found. `past`: by what was known at an earlier moment, so that nothing is computed further or taken away. */
export function Found({ now, findings, past = false }: { now: Assay; findings: Findings; past?: boolean }) {
  const cables = findings.cables.filter((cable) => cable.role !== 'control');
  const open = openCables.value;
  return (
    <>
      {past ? <h2 class="then">{noBreak(findings.sentence)}</h2> : <h1>{noBreak(findings.sentence)}</h1>}
      <ControlPiece findings={findings} />
      {cables.length === 0 ? (
        <p>
          No cable has been described yet. Add a row for each to cables.csv, then bring the folder in on the shelf
          again.
        </p>
      ) : (
        <>
          <Sections cables={cables}>{!past && <Working now={now} />}</Sections>
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
      {now.blind === true ? (
        <p class="note">
          This trial goes by codes until somebody reveals the names at the bench; it can be taken away afterwards.
        </p>
      ) : (
        !past && <TakeAway now={now} />
      )}
    </>
  );
}
