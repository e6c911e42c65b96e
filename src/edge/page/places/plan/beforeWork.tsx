import type { TrialPlan } from '../../../../findings/plan.ts';

/** What is lacking, as things to do, and what to know before the first cut. */
export function BeforeWork({ plan }: { plan: TrialPlan | null }) {
  if (plan === null || plan.warnings.length + plan.missing.length === 0) return null;
  return (
    <section class="before-work" aria-labelledby="before-work">
      <h2 id="before-work">Before the first cut</h2>
      <ul>
        {plan.warnings.map(({ code, cable, text }) => (
          <li key={`${code} ${cable} ${text}`} class="heavy">
            <span dir="auto">{text}</span>
          </li>
        ))}
        {plan.missing.map((text) => (
          <li key={text}>
            <span dir="auto">{text}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
