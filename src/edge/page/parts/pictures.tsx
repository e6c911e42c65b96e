import { residualStrip, shareBar } from '../../../report/sheetStrips.ts';
import { variablesTheme } from '../../../report/theme.ts';
import { Picture } from './picture.tsx';

/** Sizes of the small drawings in a sheet, px. */
const STRIP = { width: 120, height: 28 };
const BAR = { width: 112, height: 6 };

/** How far one reading stands from the rest, as a dot on a line with marks at ±2 u. The number is said aloud. */
export function ResidualStrip({ residual, span }: { residual: number | null; span: number }) {
  return (
    <>
      <Picture silent class="stretch" svg={residualStrip(residual, { ...STRIP, span, theme: variablesTheme })} />
      <span class="hidden">{residual === null ? 'nothing to compare with' : `${residual.toFixed(1)} u`}</span>
    </>
  );
}

/** A share of the ± as a bar in its track. */
export function ShareBar({ share }: { share: number }) {
  return (
    <Picture
      silent
      class="stretch"
      svg={shareBar(Math.min(1, Math.max(0, share)), { ...BAR, theme: variablesTheme })}
    />
  );
}
