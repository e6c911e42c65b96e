import { useId, useState } from 'preact/hooks';
import { reportBody } from '../../../../report/publish/html/reportHtml.ts';
import { makerDocument } from '../../../../report/publish/maker/makerDocument.ts';
import { type Objection, objectionsTo, pasteable } from '../../../../report/publish/maker/objections.ts';
import { ofOneCable } from '../../../../report/publish/maker/ofOneCable.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { ChoiceField } from '../../parts/choiceField.tsx';
import { boxLinks } from '../../store/publish/boxText.ts';
import { plainName, saveFile, subjectQuery } from '../../store/publish/files.ts';
import { saveWebPage } from '../../store/publish/pageReport.ts';
import { subject } from '../../store/publish/publishing.ts';
import { makerOf } from '../../store/publish/replies.ts';
import type { PublishShown } from '../../worker/jobs.ts';
import { MakerReply } from './makerReply.tsx';
import { ReportPreview } from './reportPreview.tsx';
import { useSaid } from './useSaid.ts';

interface MakerProps {
  trial: Trial;
  shown: PublishShown;
}

/** The right of reply: a dated draft of one cable for its maker, answers to paste, and what came back. */
export function Maker({ trial, shown }: MakerProps) {
  const id = useId();
  const [looking, setLooking] = useState(false);
  const [said, setSaid] = useSaid();
  const cables = shown.findings.cables.filter(({ role }) => role !== 'control');
  const cable = cables.find((one) => one.cable === makerOf.value) ?? cables[0];
  if (cable === undefined) return null;
  const day = new Date().toISOString().slice(0, 10);
  const name = `draft-${plainName(cable.cable)}`;
  const save = async () => {
    setSaid('Making it …');
    setSaid(await saveWebPage(makerDocument(shown, cable.cable, day), `${name}.html`));
  };
  const savePdf = async (paper: 'a4' | 'letter') => {
    setSaid('Making it …');
    const query = subjectQuery(trial.trial, subject.peek());
    query.set('cable', cable.cable);
    query.set('form', 'pdf');
    query.set('paper', paper);
    setSaid(await saveFile(`/api/report?${query}`, `${name}.pdf`));
  };
  return (
    <section class="maker" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>Answering a maker</h2>
      <p>
        Before a part goes out, its makers may see what will be said of their cable and reply. A draft shows one cable
        and nothing of the others.
      </p>
      <ChoiceField
        look="licence"
        label="Cable of the draft"
        value={cable.cable}
        choices={cables.map((one) => [one.cable, one.name])}
        onChoose={(chosen) => {
          makerOf.value = chosen;
        }}
      />
      <div class="buttons">
        <button type="button" class="button" onClick={() => void savePdf('a4')}>
          Draft as PDF, A4
        </button>
        <button type="button" class="button" onClick={() => void savePdf('letter')}>
          Draft as PDF, Letter
        </button>
        <button type="button" class="button" onClick={() => void save()}>
          Draft as a web page
        </button>
      </div>
      <p class="note" role="status">
        {said}
      </p>
      <details class="draft" onToggle={(event) => setLooking(event.currentTarget.open)}>
        <summary>Look at the draft</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached without a pointer */}
        <section class="preview-window" aria-label="The draft as it will look" tabIndex={0}>
          {looking && <ReportPreview second body={reportBody(makerDocument(shown, cable.cable, day))} />}
        </section>
      </details>
      <Answers
        objections={objectionsTo(ofOneCable(shown.trial, shown.findings, cable.cable))}
        part={shown.part?.part}
      />
      <MakerReply
        key={cable.cable}
        cable={cable.cable}
        name={cable.name}
        known={trial.replies.findLast((reply) => reply.cable === cable.cable)}
      />
    </section>
  );
}

/** What is usually said against findings, and what this trial's own figures answer, to copy. */
function Answers({ objections, part }: { objections: readonly Objection[]; part: string | undefined }) {
  const [copied, setCopied] = useSaid();
  const address = part === undefined ? '' : (boxLinks.value[part] ?? '');
  const copy = async (objection: Objection) => {
    await navigator.clipboard.writeText(pasteable(objection, address)).then(
      () => setCopied(`The answer to “${objection.said}” is copied.`),
      () => setCopied('This browser does not let the page copy; mark the text and copy it yourself.'),
    );
  };
  return (
    <>
      <h3>What may be said against it</h3>
      <dl class="objections">
        {objections.map((objection) => (
          <div key={objection.id}>
            <dt>“{objection.said}”</dt>
            <dd>
              <p dir="auto">{objection.answer}</p>
              <button type="button" class="button" onClick={() => void copy(objection)}>
                Copy<span class="hidden"> the answer to “{objection.said}”</span>
              </button>
            </dd>
          </div>
        ))}
      </dl>
      <p class="note" role="status">
        {copied}
      </p>
    </>
  );
}
