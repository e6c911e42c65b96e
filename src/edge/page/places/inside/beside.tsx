import { useId, useState } from 'preact/hooks';
import type { CableFindings, Findings } from '../../../../findings/schema.ts';
import { defaultDisplayUnits } from '../../../../units/display.ts';
import { Figure } from '../../parts/figure.tsx';
import { Name } from '../../parts/name.tsx';
import { between } from './between.ts';

/** One cable put beside another: the difference with its interval, sharper than the two single figures. */
export function Beside({ findings, cable }: { findings: Findings; cable: CableFindings }) {
  const others = findings.cables.filter(
    (other) => other.cable !== cable.cable && between(findings, cable.cable, other.cable) !== null,
  );
  const [chosen, setChosen] = useState('');
  const field = useId();
  if (others.length === 0) return null;
  const pair = chosen === '' ? null : between(findings, cable.cable, chosen);
  const other = others.find((one) => one.cable === chosen);
  return (
    <section class="beside">
      <h3>
        <label for={field}>Put beside another cable</label>
      </h3>
      <select id={field} value={chosen} onChange={(event) => setChosen(event.currentTarget.value)}>
        <option value="">Choose a cable</option>
        {others.map((one) => (
          <option key={one.cable} value={one.cable}>
            {one.name || one.cable}
          </option>
        ))}
      </select>
      <div aria-live="polite">
        {pair !== null && other !== undefined && (
          <>
            <p>
              <Name>{cable.name || cable.cable}</Name> holds <Figure of={pair.size} units={defaultDisplayUnits} />{' '}
              {pair.difference.value >= 0 ? 'more' : 'less'} metal than <Name>{other.name || other.cable}</Name>
              {pair.parted ? '.' : ', and these readings cannot part the two.'}
            </p>
            <p class="note">{pair.sharper}</p>
          </>
        )}
      </div>
    </section>
  );
}
