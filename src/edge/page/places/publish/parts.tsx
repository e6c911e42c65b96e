import { useState } from 'preact/hooks';
import { type Change, MOVED_WITH_IT, ownAndMoved } from '../../../../report/publish/changedSince.ts';
import type { SealedPart, Trial } from '../../../../trial/trial.ts';
import type { PartChecked } from '../../../publish/checkedParts.ts';
import { Trouble } from '../../parts/trouble.tsx';
import { readsOnly } from '../../store/devices.ts';
import { checkedParts, lookAtPart } from '../../store/publish/publishing.ts';
import { hideFromReaders } from '../../store/publish/sealing.ts';
import { sentenceOf } from '../../store/sentenceOf.ts';
import { placeWords } from './placeWords.ts';

/** Every sealed part: what it is, its hashes, whether it comes out the same today, and what changed since. */
export function Parts({ trial }: { trial: Trial }) {
  if (trial.parts.length === 0) return null;
  const checked = new Map(checkedParts.value?.parts.map((one) => [one.part, one]));
  return (
    <section class="parts" aria-labelledby="parts-head">
      <h2 id="parts-head">Sealed parts</h2>
      <ol>
        {trial.parts.map((part) => (
          <li key={part.part}>
            <Part part={part} checked={checked.get(part.part) ?? null} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function Part({ part, checked }: { part: SealedPart; checked: PartChecked | null }) {
  const [trouble, setTrouble] = useState('');
  const hide = () => hideFromReaders(part, !part.hidden).catch((error: unknown) => setTrouble(sentenceOf(error)));
  const by = part.by === '' ? '' : ` by ${part.by}`;
  return (
    <>
      <h3>
        Part <bdi dir="auto">{part.part}</bdi>
        {part.title !== '' && (
          <>
            : <bdi dir="auto">{part.title}</bdi>
          </>
        )}
      </h3>
      <p>
        {placeWords(part.places)}.{' '}
        <span class="note">
          Sealed{part.at === null ? '' : ` ${part.at.slice(0, 10)}`}
          <bdi dir="auto">{by}</bdi>
          {part.hidden ? '; kept from readers' : ''}.
        </span>
      </p>
      <p class="again">{againWords(checked)}</p>
      <Changed checked={checked} name={part.part} />
      <details class="hashes">
        <summary>Hashes</summary>
        <dl>
          <dt>Rows</dt>
          <dd>{part.content}</dd>
          <dt>Findings</dt>
          <dd>{part.findings}</dd>
        </dl>
        <p class="note">
          Save the data below and run <code>cupel verify</code> on it: it computes this part anew and says “same
          digits”, or the first difference.
        </p>
      </details>
      <div class="buttons">
        <button
          type="button"
          class="button"
          onClick={() => {
            lookAtPart(part.part);
            document.querySelector('.what-is-shown')?.scrollIntoView({ block: 'start' });
          }}
        >
          <span>
            Look at part <bdi dir="auto">{part.part}</bdi>
          </span>
        </button>
        {!readsOnly.value && (
          <button type="button" class="button" onClick={() => void hide()}>
            {part.hidden ? 'Show it to readers' : 'Keep it from readers'}
          </button>
        )}
      </div>
      <Trouble>{trouble}</Trouble>
    </>
  );
}

function againWords(checked: PartChecked | null): string {
  if (checked === null) return checkedParts.value?.sentence || 'Being computed again.';
  if (checked.again === 'same') return 'Computed again just now: the same rows and the same digits.';
  if (checked.again === 'lost') return 'Its rows as sealed are not all here, so it cannot be computed again.';
  return 'Its rows are the same, and this version of Cupel finds other digits. The seal names the version that it was made with.';
}

function Changed({ checked, name }: { checked: PartChecked | null; name: string }) {
  if (checked?.changed == null) return null;
  const { changes, corrections } = checked.changed;
  if (changes.length + corrections.length === 0) return <p>Nothing changed since.</p>;
  const { own, moved } = ownAndMoved(changes);
  return (
    <details class="changed" open={changes.length > 0}>
      <summary>
        Changed since part <bdi dir="auto">{name}</bdi>
      </summary>
      {changes.length === 0 ? (
        <p>No figure reads otherwise.</p>
      ) : (
        <>
          <Changes changes={own} />
          {own.length > 0 && moved.length > 0 && <p>{MOVED_WITH_IT}</p>}
          <Changes changes={moved} />
        </>
      )}
      {corrections.length > 0 && (
        <>
          <h4>Put right since</h4>
          <ul>
            {corrections.map(({ entry, what, at, text, by }) => (
              <li key={`${entry} ${what}`}>
                <span class="note">{at.slice(0, 10)}</span> <bdi dir="auto">{text}</bdi>
                {by !== '' && (
                  <span class="note">
                    {' '}
                    <bdi dir="auto">{by}</bdi>
                  </span>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
    </details>
  );
}

function Changes({ changes }: { changes: readonly Change[] }) {
  if (changes.length === 0) return null;
  return (
    <ul>
      {changes.map(({ cable, name, text, at }) => (
        <li key={`${cable} ${text}`}>
          <b>
            <bdi dir="auto">{name}</bdi>
          </b>{' '}
          {text}
          {at !== null && <span class="note"> {at.slice(0, 10)}</span>}
        </li>
      ))}
    </ul>
  );
}
