import { proofShotsOf } from '../../../../findings/plan/proofShots.ts';
import type { Cable, Trial } from '../../../../trial/trial.ts';
import { Photos } from '../../parts/photos.tsx';
import { addPhoto } from '../../store/bench/remarks.ts';
import { announce } from '../../store/bench/said.ts';
import { sentenceOf } from '../../store/sentenceOf.ts';

/** The photos that a dispute asks for, cable by cable: what is there, and what is missing. */
export function ProofShots({ trial }: { trial: Trial }) {
  const cables = trial.cables.filter((cable) => cable.role !== 'control');
  if (cables.length === 0) return null;
  const missing = cables.reduce(
    (sum, { cable }) => sum + proofShotsOf(trial, cable).filter((shot) => shot.notes.length === 0).length,
    0,
  );
  return (
    <details class="proof-shots">
      <summary>
        <h2>Proof shots</h2>
        <span class="note">{missing === 0 ? 'all there' : missing === 1 ? '1 missing' : `${missing} missing`}</span>
      </summary>
      <ul>
        {cables.map((cable) => (
          <OfCable key={cable.cable} trial={trial} cable={cable} />
        ))}
      </ul>
    </details>
  );
}

function OfCable({ trial, cable }: { trial: Trial; cable: Cable }) {
  const code = trial.specimens.find((piece) => piece.cable === cable.cable && piece.code !== '')?.code ?? '';
  const name = trial.blinding.blind ? code || 'A cable without a code' : cable.name;
  return (
    <li>
      <b>
        <bdi dir="auto">{name}</bdi>
      </b>
      <ul>
        {proofShotsOf(trial, cable.cable).map(({ shot, when, notes }) => (
          <li key={shot}>
            <span>
              {shot} <span class="note">{when}</span>
            </span>
            {notes.length > 0 ? (
              <There trial={trial} notes={notes} />
            ) : (
              <Take cable={cable.cable} shot={shot} name={name} />
            )}
          </li>
        ))}
      </ul>
    </li>
  );
}

/** The photos that are there; while names are hidden only that they are, because they show the jacket. */
function There({ trial, notes }: { trial: Trial; notes: readonly string[] }) {
  if (trial.blinding.blind) return <span>there</span>;
  return <Photos trial={trial.trial} notes={trial.notes.filter(({ note }) => notes.includes(note))} />;
}

function Take({ cable, shot, name }: { cable: string; shot: string; name: string }) {
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    await addPhoto({ about: 'cable', which: cable }, file, shot).catch((error: unknown) => announce(sentenceOf(error)));
  };
  return (
    <label class="link file">
      Take it
      <input
        type="file"
        accept="image/*"
        capture="environment"
        aria-label={`Photo of the ${shot} of ${name}`}
        onChange={(event) => void take(event.currentTarget.files?.[0])}
      />
    </label>
  );
}
