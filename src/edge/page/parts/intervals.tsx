import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { CableFindings } from '../../../findings/schema.ts';
import { intervalHead, intervalRow } from '../../../report/intervalBar.ts';
import { metalKind } from '../../../report/metalKind.ts';
import { variablesTheme } from '../../../report/theme.ts';
import { type Chart, rowAxis } from './chartOf.ts';
import { Picture } from './picture.tsx';

/** Least height of a row of the chart, px. */
const LEAST_HEIGHT = 36;

/** The axis over a column of intervals, or over one cable's with its own limit; nothing when no cable has an area. */
export function IntervalAxis({ chart, cable }: { chart: Chart; cable?: CableFindings }) {
  const axis = cable === undefined ? chart.axis : rowAxis(chart, cable);
  if (axis === null) return null;
  return <Picture silent svg={intervalHead(axis, { width: chart.width, theme: variablesTheme })} />;
}

/**
 * One cable's interval, drawn as high as the row that it stands in, so that the limit runs through all rows unbroken.
 * The figures beside it say the same, so it is passed over when the page is read aloud.
 */
export function IntervalRow({ chart, cable }: { chart: Chart; cable: CableFindings }) {
  const place = useRef<HTMLDivElement>(null);
  const [height, setHeight] = useState(LEAST_HEIGHT);
  useLayoutEffect(() => {
    const now = place.current;
    if (now === null) return;
    const watch = new ResizeObserver(([entry]) => setHeight(Math.max(LEAST_HEIGHT, entry!.contentRect.height)));
    watch.observe(now);
    return () => watch.disconnect();
  }, []);
  const axis = rowAxis(chart, cable);
  return (
    <div class="interval" ref={place}>
      {axis !== null && (
        <Picture
          silent
          svg={intervalRow(cable.conductor_area, metalKind(cable.metal_found), axis, {
            width: chart.width,
            height,
            theme: variablesTheme,
          })}
        />
      )}
    </div>
  );
}
