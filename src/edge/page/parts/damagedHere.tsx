import { held } from '../store/journal/journal.ts';

/** What the bench computer's disk has damaged of this trial: figures on this page may lack it. */
export function DamagedHere() {
  const sentence = held.value?.damaged ?? '';
  if (sentence === '') return null;
  return (
    <section class="damaged-here" aria-labelledby="damaged-here" role="alert">
      <h2 id="damaged-here">A part of this trial cannot be read</h2>
      <p>
        <bdi dir="auto">{sentence}</bdi>
      </p>
      <p class="note">What this device holds of it is sent again by itself. What is recorded now is kept.</p>
    </section>
  );
}
