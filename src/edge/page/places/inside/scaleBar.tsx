import { scaleText } from '../../../../report/section/scaleBar.ts';
import { noBreak } from '../../../../report/words/noBreak.ts';
import { scaleBarLength } from './faceLayout.ts';

/** A bar of more parts than this is ticked at tenths. */
const MOST_PARTS = 10;

/** The bar that says how large the faces are drawn, short enough for a phone. */
export function ScaleBar({ scalePxPerMm, count }: { scalePxPerMm: number; count: number }) {
  const millimetres = scaleBarLength(scalePxPerMm);
  const length = millimetres * scalePxPerMm;
  const parts = Math.min(MOST_PARTS, millimetres);
  const ticks = Array.from({ length: parts + 1 }, (_, part) => {
    const isLong = part === 0 || part === parts || part === MOST_PARTS / 2;
    return `M${(part * length) / parts + 0.5} 8v${isLong ? -8 : -4}`;
  }).join('');
  return (
    <p class="scale-bar">
      <svg width={length + 1} height="9" aria-hidden="true" focusable="false">
        <path d={`M0 8.5h${length + 1}${ticks}`} stroke="var(--ink)" fill="none" />
      </svg>
      {noBreak(scaleText(millimetres, count))}
    </p>
  );
}
