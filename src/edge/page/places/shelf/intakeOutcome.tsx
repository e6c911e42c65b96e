import { useEffect, useRef } from 'preact/hooks';
import { intake, keepTheGood, leaveIt } from '../../store/intake.ts';
import { addressOf } from '../../store/routeOf.ts';
import type { PackageRead } from '../../worker/jobs.ts';

/** What came of what was brought. Takes the focus, so that nobody has to look for it. */
export function IntakeOutcome() {
  const now = intake.value;
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (now.state !== 'idle' && now.state !== 'reading') place.current?.focus();
  }, [now.state]);
  if (now.state === 'idle') return null;
  return (
    <div class="intake" ref={place} tabIndex={-1} role="status">
      {now.state === 'reading' && (
        <p class="working">
          <progress aria-label="Reading" /> Reading …
          <button type="button" class="link" onClick={leaveIt}>
            Stop
          </button>
        </p>
      )}
      {now.state === 'refused' && (
        <>
          <p>
            <b>Nothing was brought in.</b>
          </p>
          <p>{now.sentence}</p>
        </>
      )}
      {now.state === 'asking' && <Refused read={now.read} good={now.good} />}
      {now.state === 'kept' && (
        <>
          <p>
            <b>{keptSentence(now.added, now.photos, now.left)}</b>{' '}
            <a href={addressOf({ place: 'inside', trial: now.trial, cable: null })}>Look inside</a>
          </p>
          <Notes notes={now.notes} />
        </>
      )}
    </div>
  );
}

function Refused({ read, good }: { read: PackageRead; good: number }) {
  const count = read.refusals.length;
  return (
    <>
      <p>
        <b>{count === 1 ? 'One thing' : `${count} things`} could not be read, so nothing was brought in yet.</b>
      </p>
      <div class="refusals">
        <table>
          <caption class="hidden">What could not be read</caption>
          <thead>
            <tr>
              <th scope="col">Where</th>
              <th scope="col">Found</th>
              <th scope="col">Expected</th>
            </tr>
          </thead>
          <tbody>
            {read.refusals.slice(0, SHOWN).map((refusal, index) => (
              <tr key={index}>
                <td>
                  {refusal.file}
                  {refusal.line !== null && `, line ${refusal.line}`}
                  {refusal.column !== null && refusal.column !== '' && `, ${refusal.column}`}
                </td>
                <td>
                  <bdi dir="auto">{refusal.found}</bdi>
                </td>
                <td>
                  {refusal.expected}
                  {refusal.advice ? `. ${refusal.advice}` : ''}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {count > SHOWN && <p class="note">And {count - SHOWN} more of the kind.</p>}
      <Notes notes={read.notes} />
      <div class="buttons">
        {good > 0 && (
          <button type="button" class="button main" onClick={() => void keepTheGood()}>
            Keep the {good} good rows
          </button>
        )}
        <button type="button" class="button" onClick={leaveIt}>
          Leave it, I will mend the file
        </button>
      </div>
    </>
  );
}

/** More refusals than this are counted, not listed: the first ones tell what is wrong with the file. */
const SHOWN = 50;

function Notes({ notes }: { notes: readonly string[] }) {
  if (notes.length === 0) return null;
  return (
    <ul class="notes">
      {notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  );
}

function keptSentence(added: number, photos: number, left: number): string {
  const first =
    added === 0
      ? 'Everything in it was on the shelf already.'
      : `${added} ${added === 1 ? 'entry is' : 'entries are'} on the shelf now.`;
  const second = left > 0 ? ` ${left === 1 ? 'One row was' : `${left} rows were`} left out.` : '';
  const pictures = photos === 0 ? '' : ` ${photos === 1 ? 'One photo' : `${photos} photos`} came along.`;
  return first + pictures + second;
}
