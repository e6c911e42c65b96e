import type { EnduranceTest } from '../../../../findings/shapes/jacket.ts';
import { curveReach, enduranceCurve } from '../../../../report/jacket/enduranceCurve.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { Name } from '../../parts/name.tsx';
import { Picture } from '../../parts/picture.tsx';

const SIZE = { width: 316, height: 168 };

/** The share of pieces still whole, one picture for each cable on one axis. */
export function Curves({ test }: { test: EnduranceTest }) {
  const cables = test.cables.filter((c) => c.pieces.length > 0);
  const most = curveReach(cables);
  return (
    <>
      <ul class="curves">
        {cables.map((cable) => (
          <li key={cable.cable}>
            <h3>
              <Name>{cable.name || cable.cable}</Name>{' '}
              <span class="unit">
                {cable.failed} of {cable.n} failed
              </span>
            </h3>
            {cable.failed === 0 && <p class="note">No piece failed: no band can be drawn.</p>}
            <Picture
              class="stretch"
              svg={enduranceCurve(cable, { ...SIZE, theme: variablesTheme, unit: test.unit, most })}
            />
          </li>
        ))}
      </ul>
      <p class="note legend">
        Steps show the share of pieces still whole, in per cent
        {cables.some((c) => c.failed > 0) && '; the shaded band holds it 95 times in 100'}. Full dots failed there, open
        ones were whole when the test was ended.
        {cables.some((c) => c.failed > 0) && ' So few pieces leave wide bands.'}
      </p>
    </>
  );
}
