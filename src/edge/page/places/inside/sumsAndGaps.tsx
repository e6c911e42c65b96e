import type { CableFindings } from '../../../../findings/schema.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';

/** Whether the masses add up, what the piece fits, what was not measured and what was assumed, each in sentences. */
export function SumsAndGaps({ cable }: { cable: CableFindings }) {
  return (
    <>
      <Sentences title="Do the masses add up?" sentences={cable.masses.map((mass) => mass.text)} />
      <Sentences title="What it fits" sentences={cable.fit.map((fit) => fit.text)} />
      <Sentences title="Not measured" sentences={cable.missing} />
      <Sentences title="Assumed" sentences={cable.assumed} />
    </>
  );
}

function Sentences({ title, sentences }: { title: string; sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  return (
    <section>
      <h3>{title}</h3>
      <ul class="plain">
        {sentences.map((sentence) => (
          <li key={sentence}>{noBreak(sentence)}</li>
        ))}
      </ul>
    </section>
  );
}
