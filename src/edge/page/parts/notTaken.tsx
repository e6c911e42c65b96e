import { notTaken, takeOff } from '../store/journal/journal.ts';

/** What was recorded here and the bench computer would not take: stays in sight, with the reason, until somebody lets go of it. */
export function NotTaken() {
  const list = notTaken.value;
  if (list.length === 0) return null;
  return (
    <section class="not-taken" aria-labelledby="not-taken" role="alert">
      <h2 id="not-taken">The bench computer would not take {list.length === 1 ? 'this' : 'these'}</h2>
      <ul>
        {list.map(({ entry, sentence }) => (
          <li key={entry.id}>
            <span>
              <bdi dir="auto">{sentence}</bdi>
            </span>{' '}
            <button type="button" class="link" onClick={() => void takeOff(entry.id)}>
              Take it off this device
            </button>
          </li>
        ))}
      </ul>
      <p class="note">It is kept here alone, and sent once more whenever this page is opened.</p>
    </section>
  );
}
