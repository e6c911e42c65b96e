import { downOne, leftOut, levelWithAbove, rankOf, upOne } from '../../store/standing/ranks.ts';
import { tried } from '../../store/standing/standing.ts';
import { sharesNow, takeRanking } from '../../store/standing/trying.ts';
import type { Stood } from './order.tsx';

/** Weights from an order of importance alone. */
export function Ranking({ stood }: { stood: Stood }) {
  const { criteria } = stood.decide;
  const shares = sharesNow(stood);
  const { wish } = tried.value;
  const ranking = wish !== null && 'ranking' in wish ? wish.ranking : rankOf(shares);
  const nameOf = (id: string) => criteria.find((c) => c.id === id)?.name ?? id;
  const inIt = ranking.flat();
  const rest = criteria.filter(({ id }) => !inIt.includes(id));
  const active = wish !== null && 'ranking' in wish;
  return (
    <section class="ranking">
      <h3>Rank instead</h3>
      <p class="note">
        Put the criteria in order and leave the numbers to it: each gets the mean of all weights that keep the order.
        {active ? '' : ' The order below is that of the shares at hand.'}
      </p>
      <ol>
        {ranking.map((group, place) =>
          group.map((id, within) => (
            <li key={id} value={place + 1}>
              <span class="rank-name">
                {nameOf(id)} {active && <span class="note">counts {shares.get(id) ?? 0}</span>}
              </span>
              <span class="rank-acts">
                <Act
                  of={nameOf(id)}
                  text="Up"
                  off={place === 0 && group.length === 1}
                  onAct={() => upOne(ranking, id)}
                />
                <Act
                  of={nameOf(id)}
                  text="Down"
                  off={place === ranking.length - 1 && group.length === 1}
                  onAct={() => downOne(ranking, id)}
                />
                <Act
                  of={nameOf(id)}
                  text="Level with above"
                  off={place === 0 || within > 0 || group.length > 1}
                  onAct={() => levelWithAbove(ranking, id)}
                />
                <Act of={nameOf(id)} text="Leave out" off={inIt.length === 1} onAct={() => leftOut(ranking, id)} />
              </span>
            </li>
          )),
        )}
      </ol>
      {rest.length > 0 && (
        <p class="rank-rest">
          <label>
            Add{' '}
            <select value="" onChange={(event) => takeRanking([...ranking, [event.currentTarget.value]])}>
              <option value="">a criterion</option>
              {rest.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
        </p>
      )}
      {!active && (
        <button type="button" class="button" onClick={() => takeRanking(ranking)}>
          Take weights from this order
        </button>
      )}
    </section>
  );
}

interface ActProps {
  /** What it is done to. */
  of: string;
  text: string;
  off: boolean;
  onAct: () => string[][];
}

function Act({ of, text, off, onAct }: ActProps) {
  return (
    <button
      type="button"
      class="link"
      aria-label={`${text}: ${of}`}
      disabled={off}
      onClick={() => takeRanking(onAct())}
    >
      {text}
    </button>
  );
}
