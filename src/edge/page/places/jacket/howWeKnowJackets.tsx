import type { Findings } from '../../../../findings/schema.ts';
import type { EnduranceTest, Jacket } from '../../../../findings/shapes/jacket.ts';
import { plainText } from '../../../../report/figures.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { HowFold } from '../../parts/howFold.tsx';
import { Name } from '../../parts/name.tsx';
import { WideRegion } from '../../parts/wideRegion.tsx';

/** The standards and statistics behind the place, for those who want them. */
export function HowWeKnowJackets({ jacket, findings }: { jacket: Jacket; findings: Findings }) {
  return (
    <HowFold>
      <p>
        {noBreak(
          'A wall is the mean of readings round a cut face in the manner of IEC 60811-201, stated to a hundredth of a millimetre, with its least reading. Shares of the face are areas: metal from mass or resistance, the whole from the outer diameter, the jacket from diameter and wall, and what is left is air. Density is jacket mass over jacket volume, or by weighing under water.',
        )}{' '}
        Intervals hold the true value {Math.round(100 * findings.engine.level)} times in 100.
      </p>
      {jacket.endurance.map((test) => (
        <OneTest key={`${test.test} ${test.stress} ${test.exposure}`} test={test} />
      ))}
    </HowFold>
  );
}

function OneTest({ test }: { test: EnduranceTest }) {
  const shaped = test.cables.filter((c) => c.weibull !== null || c.curve_median !== null);
  return (
    <>
      <h3>
        <bdi dir="auto">{test.test}</bdi>
      </h3>
      {test.how_we_know.map((line) => (
        <p key={line}>{noBreak(line)}</p>
      ))}
      {test.kind === 'amount' && shaped.length > 0 && (
        <WideRegion name={`Medians of ${test.test}`}>
          <table class="small">
            <thead>
              <tr>
                <th scope="col">Cable</th>
                <th scope="col" class="number">
                  Weibull shape
                </th>
                <th scope="col" class="number">
                  scale, {test.unit}
                </th>
                <th scope="col" class="number">
                  median off the curve
                </th>
                <th scope="col">median shown by</th>
              </tr>
            </thead>
            <tbody>
              {shaped.map((c) => (
                <tr key={c.cable}>
                  <th scope="row">
                    <Name>{c.name || c.cable}</Name>
                  </th>
                  <td class="number">{c.weibull === null ? '–' : c.weibull.shape.toFixed(1)}</td>
                  <td class="number">
                    {c.weibull === null ? '–' : plainText(Number(c.weibull.scale.toPrecision(3)), '')}
                  </td>
                  <td class="number">
                    {c.curve_median?.value == null ? 'not reached' : plainText(c.curve_median.value, '')}
                  </td>
                  <td>{c.median?.how ?? '–'}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </WideRegion>
      )}
      {test.pairs.length > 0 && <PairFigures test={test} />}
    </>
  );
}

function PairFigures({ test }: { test: EnduranceTest }) {
  const name = new Map(test.cables.map((c) => [c.cable, c.name || c.cable]));
  return (
    <WideRegion name={`Pairs of ${test.test}`}>
      <table class="small">
        <thead>
          <tr>
            <th scope="col">Pair</th>
            {test.kind === 'amount' && (
              <th scope="col" class="number">
                p, Holm
              </th>
            )}
            <th scope="col" class="number">
              exact p
            </th>
            <th scope="col" class="number">
              exact p, Holm
            </th>
            <th scope="col" class="number">
              least that it could be
            </th>
          </tr>
        </thead>
        <tbody>
          {test.pairs.map((pair) => (
            <tr key={`${pair.a} ${pair.b}`}>
              <th scope="row">
                <bdi dir="auto">{name.get(pair.a)}</bdi>, <bdi dir="auto">{name.get(pair.b)}</bdi>
              </th>
              {test.kind === 'amount' && <td class="number">{chance(pair.p_holm)}</td>}
              <td class="number">{chance(pair.p_exact)}</td>
              <td class="number">{chance(pair.p_exact_holm)}</td>
              <td class="number">{chance(pair.p_smallest)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </WideRegion>
  );
}

const chance = (p: number | null) => (p === null ? '–' : p < 0.001 ? 'under 0.001' : p.toFixed(p < 0.1 ? 3 : 2));
