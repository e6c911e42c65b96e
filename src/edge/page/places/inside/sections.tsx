import type { ComponentChildren } from 'preact';
import type { CableFindings } from '../../../../findings/schema.ts';
import { sectionDrawing } from '../../../../report/section/sectionDrawing.ts';
import { sectionInput } from '../../../../report/section/sectionInput.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { Name } from '../../parts/name.tsx';
import { HeadlineOutcome } from '../../parts/outcomeWord.tsx';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { PAPER_WIDTH, printing } from '../../store/media.ts';
import { faceLayout } from './faceLayout.ts';
import { ScaleBar } from './scaleBar.tsx';

/** Width that the first drawing is made for, before the page has been measured, px. */
const FIRST_WIDTH = 1360;

/** Every cable's cut face at one true scale, with what came of its label below; `children` stand left of the scale bar. */
export function Sections({ cables, children }: { cables: readonly CableFindings[]; children: ComponentChildren }) {
  const [row, width] = useWidth<HTMLUListElement>(FIRST_WIDTH);
  const inputs = cables.map(sectionInput);
  const layout = faceLayout(inputs, printing.value ? PAPER_WIDTH : width);
  return (
    <section class="faces" aria-label="Cut faces">
      <h2 class="hidden">Cut faces</h2>
      <div class="faces-head">
        <div>{children}</div>
        <ScaleBar scalePxPerMm={layout.scalePxPerMm} count={cables.length} />
      </div>
      <ul ref={row} style={{ '--across': layout.across, '--cut-height': `${layout.height}px` }}>
        {cables.map((cable, index) => (
          <li key={cable.cable}>
            <div class="cut">
              <Picture
                svg={
                  sectionDrawing(inputs[index]!, {
                    scalePxPerMm: layout.scalePxPerMm,
                    theme: variablesTheme,
                    showTicks: 'upright',
                  }).svg
                }
              />
            </div>
            <p class="face-name">
              <Name>{cable.name || cable.cable}</Name>
            </p>
            <HeadlineOutcome cable={cable} />
          </li>
        ))}
      </ul>
      <Legend />
    </section>
  );
}

/** What the signs of a cut face mean. */
function Legend() {
  return (
    <p class="legend">
      Dashed ring: the area that the label claims. Solid disc: all the metal that was found. Bare gap between them:
      metal that is not there. Speckle: strands, with air between. Crossed ruling: not measured.
    </p>
  );
}
