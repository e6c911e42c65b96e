import type { Entry } from '../../../../journal/entry.ts';
import { corrections } from '../../../../trial/corrections.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { whenWords } from '../../store/whenWords.ts';

/** Everything that was put right, the latest first. Not shown while names are hidden, because corrections name cables. */
export function CorrectionList({ trial, entries }: { trial: Trial; entries: readonly Entry[] }) {
  if (trial.blinding.blind) {
    return (
      <section class="corrections">
        <h2>Corrections</h2>
        <p class="note">
          They name cables, so they are shown once the names are revealed. The journal below has them by code.
        </p>
      </section>
    );
  }
  const all = corrections(entries, trial).reverse();
  return (
    <section class="corrections">
      <h2>Corrections</h2>
      {all.length === 0 ? (
        <p class="note">Nothing was corrected.</p>
      ) : (
        <ol>
          {all.map((one) => (
            <li key={`${one.entry} ${one.what}`}>
              <span class="when">{whenWords(one.at)}</span>
              <span>
                <bdi dir="auto">{one.text}</bdi>
                <span class="note">
                  {' '}
                  <bdi dir="auto">{[one.by, one.device].filter((words) => words !== '').join(', ')}</bdi>
                </span>
              </span>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
