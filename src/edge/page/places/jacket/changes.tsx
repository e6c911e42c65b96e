import type { ExposureChange } from '../../../../findings/shapes/jacket.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';

/** What pieces took up, lost or swelled between before and after. */
export function Changes({ changes }: { changes: readonly ExposureChange[] }) {
  const told = changes.filter(({ text }) => text !== '');
  if (told.length === 0) return null;
  return (
    <section class="jacket-test">
      <h2>What changed in fluids and heat</h2>
      <ul class="changes">
        {told.map(({ cable, exposure, text }) => (
          <li key={`${cable} ${exposure}`}>{noBreak(text)}</li>
        ))}
      </ul>
    </section>
  );
}
