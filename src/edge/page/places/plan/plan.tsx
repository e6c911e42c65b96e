import '../../styles/plan.css';
import '../../styles/planTables.css';
import '../../styles/sheets.css';
import { useEffect } from 'preact/hooks';
import type { TrialPlan } from '../../../../findings/plan.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { Frame } from '../../parts/frame.tsx';
import { trialPlaces } from '../../parts/trialPlaces.ts';
import { Trouble } from '../../parts/trouble.tsx';
import { folded, held, openJournal } from '../../store/journal/journal.ts';
import { phone } from '../../store/media.ts';
import { namesShown } from '../../store/plan/namesShown.ts';
import { followPlan, outlook, planned } from '../../store/plan/planned.ts';
import type { SheetKind } from '../../worker/jobs.ts';
import { BeforeWork } from './beforeWork.tsx';
import { Blinding } from './blinding.tsx';
import { Claims } from './claims/claims.tsx';
import { CutList } from './cutList.tsx';
import { LookAhead, planSentence } from './lookAhead.tsx';
import { Methods } from './methods.tsx';
import { NamesPutBy, NamesStandHere } from './namesPutBy.tsx';
import { ProofShots } from './proofShots.tsx';
import { Sheets } from './sheets.tsx';
import { Tools } from './tools/tools.tsx';
import { ToPrint } from './toPrint.tsx';
import { WorkOrder } from './workOrder.tsx';

/** What is to be done, with what, in which order, and whether that would settle the question. */
export function Plan({ trial, sheet }: { trial: string; sheet: SheetKind | null }) {
  useEffect(() => {
    void openJournal(trial);
    return followPlan();
  }, [trial]);
  const now = folded.value?.trial === trial ? folded.value : null;
  const hidden = now?.blinding.blind === true && !namesShown(trial, now.blinding.since);
  // The cut list names cables beside codes; labels bear codes alone while the trial is blind.
  if (now !== null && sheet !== null && !(hidden && sheet === 'cut-list')) return <Sheets trial={now} what={sheet} />;
  return (
    <Frame
      title={`Plan of ${now?.title || trial}`}
      places={trialPlaces(trial, 'plan')}
      trial={{ title: now?.title || trial, place: now?.place ?? '' }}
      units
      compact
    >
      {now === null ? <Waiting /> : hidden ? <ByCodes trial={now} /> : <Laid trial={now} />}
    </Frame>
  );
}

const SECTIONS = [
  ['claims', 'Cables'],
  ['methods', 'What is wanted'],
  ['tools', 'Tools'],
  ['cutting', 'Cut list'],
  ['work-order', 'Order of work'],
  ['to-print', 'On paper'],
] as const;

/** The way down a long page. */
function OnThisPage() {
  return (
    <nav class="on-this-page" aria-label="On this page">
      {SECTIONS.map(([id, name]) => (
        <a key={id} href={`#${id}`}>
          {name}
        </a>
      ))}
    </nav>
  );
}

function Waiting() {
  const sentence = held.value?.sentence ?? '';
  if (held.value?.asked !== true) return <h1>Reading the trial.</h1>;
  return (
    <>
      <h1>Nothing is known of this trial yet.</h1>
      <Trouble>{sentence}</Trouble>
      <a href="/">Back to the shelf</a>
    </>
  );
}

/** The plan while the trial goes by codes: nothing that names a cable. */
function ByCodes({ trial }: { trial: Trial }) {
  const plan = planned.value?.trial === trial.trial ? planned.value.plan : null;
  return (
    <div class="plan">
      <h1>The trial goes by codes.</h1>
      <NamesPutBy trial={trial} />
      <Methods trial={trial} plan={plan} />
      <Tools trial={trial} />
      <WorkOrder trial={trial} plan={plan} />
      <Blinding trial={trial} />
      <ToPrint trial={trial.trial} pieces={piecesIn(plan)} byCodes />
    </div>
  );
}

const piecesIn = (plan: TrialPlan | null) => plan?.cables.reduce((sum, cable) => sum + cable.pieces.length, 0) ?? 0;

function Laid({ trial }: { trial: Trial }) {
  const laid = planned.value?.trial === trial.trial ? planned.value : null;
  const ahead = outlook.value?.trial === trial.trial ? outlook.value : null;
  const plan = laid?.plan ?? null;
  return (
    <div class="plan">
      <h1 aria-live="polite">{planSentence(trial, ahead)}</h1>
      <Trouble>{laid?.sentence ?? ''}</Trouble>
      {trial.blinding.blind && <NamesStandHere trial={trial} />}
      {!phone.value && <OnThisPage />}
      <LookAhead trial={trial} ahead={ahead} plan={plan} />
      <BeforeWork plan={plan} />
      <Claims trial={trial} />
      <Methods trial={trial} plan={plan} />
      <Tools trial={trial} />
      <CutList trial={trial} laid={laid} />
      <WorkOrder trial={trial} plan={plan} />
      <Blinding trial={trial} />
      <ProofShots plan={plan} />
      <ToPrint trial={trial.trial} pieces={piecesIn(plan)} />
    </div>
  );
}
