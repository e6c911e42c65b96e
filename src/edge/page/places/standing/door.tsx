import { noBreak } from '../../../../report/words/noBreak.ts';
import { Acceptability } from './acceptability.tsx';
import { Criteria } from './criteria.tsx';
import { doorOpen } from './doorOpen.ts';
import type { Stood } from './order.tsx';
import { Ranking } from './ranking.tsx';

/** Everything that is not needed to read an order: criteria and their curves, ranking, tastes, criteria that say one thing twice. */
export function Door({ stood }: { stood: Stood }) {
  const alike = stood.warnings.filter(({ code }) => code === 'standing-alike');
  return (
    <details
      class="standing-door"
      open={doorOpen.value}
      onToggle={(event) => {
        doorOpen.value = event.currentTarget.open;
      }}
    >
      <summary>
        <h2>Criteria, curves, ranking and tastes</h2>
      </summary>
      {doorOpen.value && (
        <>
          {alike.map(({ text }) => (
            <p key={text} class="alike">
              {noBreak(text)}
            </p>
          ))}
          <Criteria stood={stood} />
          <Ranking stood={stood} />
          <Acceptability decide={stood.decide} />
        </>
      )}
    </details>
  );
}
