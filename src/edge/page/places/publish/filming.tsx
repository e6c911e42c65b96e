import { ChoiceField } from '../../parts/choiceField.tsx';
import '../../styles/film.css';
import { useId, useState } from 'preact/hooks';
import { METHODS } from '../../../../report/publish/cards/methods.ts';
import { chapterLines, cueSheet, cuesOf, subtitles } from '../../../../report/publish/film/cues.ts';
import { SHOTS } from '../../../../report/publish/film/shotLists.ts';
import type { Trial } from '../../../../trial/trial.ts';
import { handOver, plainName } from '../../store/publish/files.ts';
import { addressOf } from '../../store/routeOf.ts';
import { useSaid } from './useSaid.ts';

/** For filming: the second screen, what to film of each method with the sentence that explains it, and the clock's cues as files. */
export function Filming({ trial }: { trial: Trial }) {
  const id = useId();
  const [said, setSaid] = useSaid();
  const [chosen, setChosen] = useState('');
  const cues = trial.blinding.blind ? [] : cuesOf(trial);
  const recordings = [...new Set(cues.map(({ footage }) => footage))];
  const recording = recordings.find((each) => each === chosen) ?? recordings[0] ?? '';
  const inOne = cues.filter(({ footage }) => footage === recording);
  const save = (text: string, type: string, ending: string) => {
    const name = `${plainName(trial.trial)}-${ending}`;
    handOver(new Blob([text], { type }), name);
    setSaid(`${name} is among your downloads.`);
  };
  return (
    <section class="shots" aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`}>For filming</h2>
      <p>
        <a href={addressOf({ place: 'publish', trial: trial.trial, opened: 'film' })} target="_blank" rel="noopener">
          Open the second screen
        </a>
        : it follows the bench with the last reading in large type, by codes until the names are shown.
      </p>
      {METHODS.map(({ method, title, sentence, note }) => (
        <details key={method}>
          <summary>{title}</summary>
          <p class="said">{sentence}</p>
          <p class="note">{note}</p>
          <ol>
            {(SHOTS[method] ?? []).map((shot) => (
              <li key={shot}>{shot}</li>
            ))}
          </ol>
        </details>
      ))}
      <h3>Where things are in the recordings</h3>
      {cues.length === 0 ? (
        <p class="note">
          {trial.blinding.blind
            ? 'Names are hidden; the cues come once they are shown.'
            : 'No reading has its place in a recording yet. Start the filming clock at the bench, on the slate.'}
        </p>
      ) : (
        <>
          <p>
            {cues.length === 1 ? 'One reading has its place.' : `${cues.length} readings and notes have their places.`}
          </p>
          {recordings.length > 1 && (
            <ChoiceField
              look="licence"
              label="Recording of chapters and subtitles"
              value={recording}
              choices={recordings.map((each) => [each, each || 'without a name'])}
              onChoose={setChosen}
            />
          )}
          <div class="buttons">
            <button type="button" class="button" onClick={() => save(cueSheet(cues), 'text/csv', 'cues.csv')}>
              Cue sheet
            </button>
            <button
              type="button"
              class="button"
              onClick={() => save(`${chapterLines(inOne)}\n`, 'text/plain', 'chapters.txt')}
            >
              Chapters
            </button>
            <button
              type="button"
              class="button"
              onClick={() => save(subtitles(inOne), 'application/x-subrip', 'subtitles.srt')}
            >
              Subtitles
            </button>
          </div>
        </>
      )}
      <p class="note" role="status">
        {said}
      </p>
    </section>
  );
}
