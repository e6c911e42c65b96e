import type { Decide } from '../../../../findings/shapes/decide.ts';
import { ordinal } from '../../../../report/publish/pictures/placeChart.ts';
import { Name } from '../../parts/name.tsx';
import { WideRegion } from '../../parts/wideRegion.tsx';

const PERCENT = 100;
const LEAST = 0.005;

/** Places over tastes near the weights, and the mean of the tastes that bring each cable first. */
export function Acceptability({ decide }: { decide: Decide }) {
  const counting = decide.criteria.filter(({ weight }) => weight > 0);
  return (
    <section class="acceptability">
      <h3>Places over tastes near these weights</h3>
      <p class="note">
        Acceptability, in 100: measurement and taste together. Beside it the mean of the tastes at which a cable comes
        first, where it does so often enough to tell.
      </p>
      <WideRegion name="Places over tastes">
        <table class="small">
          <caption class="hidden">Acceptability of each place, and central weights</caption>
          <thead>
            <tr>
              <th scope="col">Cable</th>
              {decide.cables.map(({ cable }, at) => (
                <th key={cable} scope="col" class="number">
                  {ordinal(at + 1)}
                </th>
              ))}
              {counting.map(({ id, name }, at) => (
                <th key={id} scope="col" class={at === 0 ? 'number parting' : 'number'}>
                  {name.split(',')[0]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {decide.cables.map(({ cable, name, acceptability, central_weights: central }) => (
              <tr key={cable}>
                <th scope="row">
                  <Name>{name || cable}</Name>
                </th>
                {acceptability.map((chance, at) => (
                  <td key={decide.cables[at]!.cable} class="number">
                    {chance < LEAST ? '' : Math.round(PERCENT * chance)}
                  </td>
                ))}
                {central === null ? (
                  <td colSpan={counting.length} class="parting unknown">
                    first too seldom to say
                  </td>
                ) : (
                  counting.map(({ id }, at) => (
                    <td key={id} class={at === 0 ? 'number parting' : 'number'}>
                      {Math.round(PERCENT * (central.find((w) => w.criterion === id)?.weight ?? 0))}
                    </td>
                  ))
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </WideRegion>
    </section>
  );
}
