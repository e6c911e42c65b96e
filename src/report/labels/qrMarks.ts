import { element, group } from '../svg.ts';
import { paperTheme } from '../theme.ts';

/** A QR code as its modules: true is dark; a square, row by row from the top. */
export type QrMatrix = readonly (readonly boolean[])[];

/** Blank modules that a reader needs round a code. ISO/IEC 18004, from memory. */
const QUIET = 4;

/**
 * The code in a square of that size, its blank edge inside; every row of dark modules that touch is one bar. Empty for no
 * matrix. The modules are made elsewhere and handed in.
 *
 * @throws RangeError when the matrix is not square
 */
export function qrMarks(matrix: QrMatrix | null, x: number, y: number, size: number): string {
  if (matrix === null || matrix.length === 0) return '';
  const n = matrix.length;
  if (matrix.some((row) => row.length !== n)) throw new RangeError('a QR code is as wide as it is high');
  const scale = size / (n + 2 * QUIET);
  const path = matrix.map((row, line) => barsOf(row, line)).join('');
  return group(
    {
      transform: `translate(${x.toFixed(3)} ${y.toFixed(3)}) scale(${scale.toFixed(5)})`,
      'shape-rendering': 'crispEdges',
    },
    element('rect', { width: n + 2 * QUIET, height: n + 2 * QUIET, fill: paperTheme.ground }),
    element('path', { fill: paperTheme.ink, d: path }),
  );
}

function barsOf(row: readonly boolean[], line: number): string {
  let path = '';
  for (let at = 0; at < row.length; at++) {
    if (!row[at]) continue;
    const start = at;
    while (row[at + 1]) at++;
    const wide = at - start + 1;
    path += `M${start + QUIET} ${line + QUIET}h${wide}v1h-${wide}z`;
  }
  return path;
}
