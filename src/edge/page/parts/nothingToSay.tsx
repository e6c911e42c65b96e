import { useEffect } from 'preact/hooks';
import { loadShelf, shelf } from '../store/shelf.ts';
import { Trouble } from './trouble.tsx';

/** Why nothing can be said about a trial: no trial of that name stands on the shelf, or something stood in the way. */
export function NothingToSay({ trial, sentence }: { trial: string; sentence: string }) {
  useEffect(() => {
    void loadShelf();
  }, []);
  const now = shelf.value;
  const answered = now.state === 'ready' && now.sentence === '';
  const unknown = answered && now.trials.every((line) => line.trial !== trial);
  return (
    <>
      <h1>
        {unknown ? (
          <>
            No trial called “<bdi dir="auto">{trial}</bdi>” is on this shelf.
          </>
        ) : (
          'Nothing can be said about this trial yet.'
        )}
      </h1>
      <Trouble>
        {unknown ? 'It may stand on another bench computer, or the address may have lost a letter.' : sentence}
      </Trouble>
      <a href="/">Back to the shelf</a>
    </>
  );
}
