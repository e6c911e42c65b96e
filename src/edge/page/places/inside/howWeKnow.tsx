import type { CableFindings, Findings } from '../../../../findings/schema.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { wholeText } from '../../../../units/wholeText.ts';
import { HowFold } from '../../parts/howFold.tsx';
import { Name } from '../../parts/name.tsx';
import { WideRegion } from '../../parts/wideRegion.tsx';

/** The statistics behind the page, for those who want them. */
export function HowWeKnow({ findings, entries }: { findings: Findings; entries: number }) {
  const engine = findings.engine;
  return (
    <HowFold>
      <p>
        Area, metal, lay and conductivity of each cable are solved for together from all its readings, once for each
        metal that it could be; every tool’s limit of error is carried as one unknown that all its readings share.
        “Meets” is said when the chance of meeting is above {percent(engine.meets_above)}, “falls short” when it is
        below {percent(engine.short_below)}, and anything between is not settled. Intervals hold the true value{' '}
        {Math.round(100 * engine.level)} times in 100.
      </p>
      <WideRegion name="How the readings of each cable agree">
        <table class="small">
          <thead>
            <tr>
              <th scope="col">Cable</th>
              <th scope="col" class="number">
                χ²
              </th>
              <th scope="col" class="number">
                degrees of freedom
              </th>
              <th scope="col" class="number">
                p
              </th>
              <th scope="col">Random draws against the closed form</th>
              <th scope="col">Chance of each metal</th>
            </tr>
          </thead>
          <tbody>{findings.cables.map(Row)}</tbody>
        </table>
      </WideRegion>
      <dl class="figures">
        <div>
          <dt>Method</dt>
          <dd>{noBreak(engine.method)}</dd>
        </div>
        <div>
          <dt>Engine</dt>
          <dd>{engine.version}</dd>
        </div>
        <div>
          <dt>Draws</dt>
          <dd>{engine.draws === 0 ? 'none' : wholeText(engine.draws)}</dd>
        </div>
        <div>
          <dt>Seed</dt>
          <dd class="hash">{engine.seed}</dd>
        </div>
        <div>
          <dt>Content of the trial</dt>
          <dd class="hash">{engine.content}</dd>
        </div>
        <div>
          <dt>Entries</dt>
          <dd>{entries}</dd>
        </div>
      </dl>
      <p class="note">
        The seed comes from the content, so whoever computes the same entries again gets the same digits.
      </p>
    </HowFold>
  );
}

function Row(cable: CableFindings) {
  const fit = cable.consistency;
  return (
    <tr key={cable.cable}>
      <th scope="row">
        <Name>{cable.name || cable.cable}</Name>
      </th>
      <td class="number">{fit === null ? '–' : fit.chi2.toFixed(1)}</td>
      <td class="number">{fit === null ? '–' : fit.dof}</td>
      <td class="number">{fit === null ? '–' : fit.p < 0.001 ? '< 0.001' : fit.p.toFixed(fit.p < 0.1 ? 3 : 2)}</td>
      <td>{drawsSentence(cable.monte_carlo)}</td>
      <td>{metals(cable.metal)}</td>
    </tr>
  );
}

function drawsSentence(draws: CableFindings['monte_carlo']): string {
  if (draws === null) return 'not drawn';
  const distance = `${draws.difference_in_u.toFixed(2)} u apart after ${wholeText(draws.draws)} draws`;
  return `${draws.agrees ? 'agrees' : 'differs'}: ${distance}${draws.stable ? '' : ', not yet steady'}`;
}

function metals(metal: CableFindings['metal']): string {
  const likely = Object.entries(metal)
    .filter(([, chance]) => chance >= 0.001)
    .sort((a, b) => b[1] - a[1]);
  return likely.length === 0 ? '–' : likely.map(([name, chance]) => `${name} ${percent(chance)}`).join(', ');
}

/** A setting or a chance in per cent, to a tenth where it has one: 97.5 %, 43 %. */
function percent(share: number): string {
  const value = 100 * share;
  return `${Number(value.toFixed(value > 90 || value < 10 ? 1 : 0))}\u00a0%`;
}
