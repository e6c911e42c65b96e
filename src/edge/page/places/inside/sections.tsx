import type { ComponentChildren } from 'preact';
import type { CableFindings } from '../../../../findings/schema.ts';
import { sectionDrawing } from '../../../../report/section/sectionDrawing.ts';
import { sectionInput } from '../../../../report/section/sectionInput.ts';
import { variablesTheme } from '../../../../report/theme.ts';
import { numberWord } from '../../../../report/words/numberWords.ts';
import { Name } from '../../parts/name.tsx';
import { HeadlineOutcome } from '../../parts/outcomeWord.tsx';
import { Picture } from '../../parts/picture.tsx';
import { useWidth } from '../../parts/useWidth.ts';
import { PAPER_WIDTH, printing } from '../../store/media.ts';
import { faceLayout } from './faceLayout.ts';

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
    </section>
  );
}

/** Length of the scale bar, mm. */
const BAR = 10;

function ScaleBar({ scalePxPerMm, count }: { scalePxPerMm: number; count: number }) {
  const length = BAR * scalePxPerMm;
  const ticks = Array.from(
    { length: BAR + 1 },
    (_, mm) => `M${mm * scalePxPerMm + 0.5} 8v${mm % 5 === 0 ? -8 : -4}`,
  ).join('');
  return (
    <p class="scale-bar">
      <svg width={length + 1} height="9" aria-hidden="true" focusable="false">
        <path d={`M0 8.5h${length + 1}${ticks}`} stroke="var(--ink)" fill="none" />
      </svg>
      {BAR} mm{count > 1 && `, one scale for all ${numberWord(count)}`}
    </p>
  );
}
