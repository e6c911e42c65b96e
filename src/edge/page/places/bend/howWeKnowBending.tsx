import type { Findings } from '../../../../findings/schema.ts';
import type { Flex, FlexCable, Judged } from '../../../../findings/shapes/flex.ts';
import { WEAK_PRIOR } from '../../../../methods/flex/pairs/tiedPreference.ts';
import { blindWords } from '../../../../report/bend/blindWords.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { HowFold } from '../../parts/howFold.tsx';
import { Name } from '../../parts/name.tsx';
import { WideRegion } from '../../parts/wideRegion.tsx';

/** The physics and statistics behind the place, for those who want them. */
export function HowWeKnowBending({ flex, findings }: { flex: Flex; findings: Findings }) {
  return (
    <HowFold>
      <p>
        A droop is solved as an elastic rod bent by its own weight without taking it for a small one: λ = w L³ / EI from
        the drop or the angle, inverted for EI, both ways up together. It is used from λ 0.5 to 20; about 6 is read
        best. A push gives EI = slope × span³ / 48 from the straight beginning, with what shear hides added back.
        Intervals hold the true value {Math.round(100 * findings.engine.level)} times in 100; a band ends only where
        every cable above is more likely than 92 % to bend more easily than every cable below.
      </p>
      {flex.cables.some((c) => c.droops.length > 0) && <Droops cables={flex.cables} />}
      {flex.judged !== null && <Pairs judged={flex.judged} />}
    </HowFold>
  );
}

function Droops({ cables }: { cables: readonly FlexCable[] }) {
  return (
    <WideRegion name="Droops">
      <table class="small">
        <thead>
          <tr>
            <th scope="col">Droop of</th>
            <th scope="col" class="number">
              overhang, mm
            </th>
            <th scope="col" class="number">
              λ
            </th>
            <th scope="col" class="number">
              own set, % of overhang
            </th>
            <th scope="col">how it was solved</th>
          </tr>
        </thead>
        <tbody>
          {cables.flatMap((cable) =>
            cable.droops.map((droop) => (
              <tr key={`${droop.specimen} ${droop.set}`}>
                <th scope="row">
                  <Name>{cable.name || cable.cable}</Name>
                </th>
                <td class="number">{droop.overhang_mm.toFixed(1)}</td>
                <td class="number">{droop.lambda?.toFixed(2) ?? '–'}</td>
                <td class="number">
                  {droop.set_of_piece === null ? '–' : (100 * droop.set_of_piece).toFixed(1).replace('-', '−')}
                </td>
                <td>{droop.way ?? 'not used'}</td>
              </tr>
            )),
          )}
        </tbody>
      </table>
    </WideRegion>
  );
}

function Pairs({ judged }: { judged: Judged }) {
  const { judges_agree: agree, judges_apart: apart, with_stiffness: rank, side } = judged;
  const facts: [string, string][] = [
    ['Model', 'Bradley and Terry’s, with Davidson’s ties and an advantage of the left hand'],
    [
      'Known beforehand',
      `ease of bending about 0 ± ${WEAK_PRIOR.ability} (logarithm of odds), left hand 0 ± ${WEAK_PRIOR.side}; weak, so that a cable that wins every pair still has a finite figure`,
    ],
    ['Weight of “same” between equals, ν', judged.tie.toFixed(2)],
    ['Left hand', `${signed(side.value)} ± ${side.se.toFixed(2)}`],
    [
      'Agreement of the judges, Kendall’s W',
      agree
        ? `${agree.w.toFixed(2)}, χ² ${agree.chi2.toFixed(1)} on ${agree.dof}, p ${pText(agree.p)}`
        : 'needs two judges who had every cable',
    ],
    [
      'Do the judges differ?',
      apart
        ? `χ² ${apart.chi2.toFixed(1)} on ${apart.dof}, p ${pText(apart.p)}${apart.widened > 1 ? `; errors widened ${apart.widened.toFixed(2)} times` : ''}`
        : 'needs two judges',
    ],
    [
      'Rank correlation with the measured stiffness',
      rank
        ? `${rank.rho.toFixed(2)}, from ${rank.interval[0].toFixed(2)} to ${rank.interval[1].toFixed(2)}, ${rank.cables} cables`
        : 'needs four cables that were measured and judged',
    ],
    [
      'Smallest set that holds the easiest with 95 %',
      judged.groups.length > 1
        ? 'needs judgements that join all cables'
        : `${judged.best_set.length} of ${judged.cables.length} cables`,
    ],
    ['How', blindWords(judged.blinded)],
  ];
  return (
    <>
      <h3>Judged pairs</h3>
      <dl class="figures">
        {facts.map(([term, said]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{noBreak(said)}</dd>
          </div>
        ))}
      </dl>
      <WideRegion name="Judges">
        <table class="small">
          <thead>
            <tr>
              <th scope="col">Judge</th>
              <th scope="col" class="number">
                pairs
              </th>
              <th scope="col" class="number">
                circular triads
              </th>
              <th scope="col" class="number">
                of decided
              </th>
              <th scope="col" class="number">
                Kendall’s ζ
              </th>
            </tr>
          </thead>
          <tbody>
            {judged.judges.map((judge) => (
              <tr key={judge.by}>
                <th scope="row">
                  <bdi dir="auto">{judge.by || 'no name given'}</bdi>
                </th>
                <td class="number">{judge.pairs}</td>
                <td class="number">{judge.circular_triads}</td>
                <td class="number">{judge.decided_triads}</td>
                <td class="number">{judge.consistency?.toFixed(2) ?? '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideRegion>
      <WideRegion name="Ease and band of each cable">
        <table class="small">
          <thead>
            <tr>
              <th scope="col">Cable</th>
              <th scope="col" class="number">
                ease, logarithm of odds
              </th>
              <th scope="col" class="number">
                standard error
              </th>
              <th scope="col" class="number">
                band
              </th>
            </tr>
          </thead>
          <tbody>
            {judged.cables.map((cable) => (
              <tr key={cable.cable}>
                <th scope="row">
                  <Name>{cable.name || cable.cable}</Name>
                </th>
                <td class="number">{signed(cable.ability)}</td>
                <td class="number">{cable.se.toFixed(2)}</td>
                <td class="number">{cable.band ?? '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideRegion>
    </>
  );
}

const signed = (x: number) => `${x < 0 ? '−' : '+'}${Math.abs(x).toFixed(2)}`;
const pText = (p: number) => (p < 0.001 ? 'under 0.001' : p.toFixed(p < 0.1 ? 3 : 2));
