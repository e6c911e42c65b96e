import { useId, useMemo } from 'preact/hooks';
import { reportBody } from '../../../../report/publish/html/reportHtml.ts';
import { LICENCES } from '../../../../report/publish/licences.ts';
import { plainName, saveFile, subjectQuery } from '../../store/publish/files.ts';
import { saveWebPage } from '../../store/publish/pageReport.ts';
import { licence, licenceId, subject } from '../../store/publish/publishing.ts';
import type { PublishShown } from '../../worker/jobs.ts';
import { ReportPreview } from './reportPreview.tsx';
import { useSaid } from './useSaid.ts';

interface ReportProps {
  trial: string;
  shown: PublishShown;
}

/** The report as it will look, and as files. */
export function Report({ trial, shown }: ReportProps) {
  const id = useId();
  const [said, setSaid] = useSaid();
  const { part } = subject.value;
  const body = useMemo(() => reportBody(shown.document), [shown.document]);
  const name = `${plainName(trial)}${part === null ? '' : `-part-${plainName(part)}`}`;
  const save = async () => {
    setSaid('Making it …');
    setSaid(await saveWebPage(shown.document, `${name}.html`));
  };
  const savePdf = async (paper: 'a4' | 'letter') => {
    setSaid('Making it …');
    const query = subjectQuery(trial, subject.peek());
    query.set('form', 'pdf');
    query.set('paper', paper);
    query.set('licence', licenceId.peek());
    setSaid(await saveFile(`/api/report?${query}`, `${name}.pdf`));
  };
  return (
    <section class="publish-report" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>Report</h2>
      <p class="note">{shown.document.partLine}</p>
      <div class="edit licence">
        <label for={id}>Licence of report and data</label>
        <select
          id={id}
          value={licenceId.value}
          onChange={(event) => {
            licenceId.value = event.currentTarget.value;
          }}
        >
          {LICENCES.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        </select>
        <span class="hint">{licence.value.lets}</span>
      </div>
      <div class="buttons">
        <button type="button" class="button main" onClick={() => void save()}>
          Save as a web page
        </button>
        <button type="button" class="button" onClick={() => void savePdf('a4')}>
          PDF, A4
        </button>
        <button type="button" class="button" onClick={() => void savePdf('letter')}>
          PDF, Letter
        </button>
      </div>
      <p class="note">The web page is made on this device, whole; a PDF is set by the bench computer.</p>
      <p class="note" role="status">
        {said}
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached without a pointer */}
      <section class="preview-window" aria-label="The report as it will look" tabIndex={0}>
        <ReportPreview body={body} />
      </section>
    </section>
  );
}
