import { useState } from 'preact/hooks';
import type { Assay } from '../../store/assay.ts';
import { savePackage } from '../../store/takeAway.ts';

/** The way out for the data: everything that was said, in files that anybody can read and compute again. */
export function TakeAway({ now }: { now: Assay }) {
  const [sentence, setSentence] = useState('');
  const save = async () => {
    setSentence('Packing …');
    setSentence(await savePackage(now));
  };
  return (
    <section class="take-away" aria-labelledby="take-away">
      <h2 id="take-away">Take it with you</h2>
      <p>
        All {now.entries.length} entries as CSV files with their description, for a spreadsheet, for another bench, or
        for whoever doubts a figure.
      </p>
      <div class="buttons">
        <button type="button" class="button" onClick={() => void save()}>
          Save the data as .zip
        </button>
      </div>
      <p role="status">{sentence}</p>
    </section>
  );
}
