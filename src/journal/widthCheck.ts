import { cellQuantity } from './cellQuantity.ts';
import type { CellProblem } from './rowCheck.ts';

type Row = Readonly<Record<string, string>>;

/** A bare solid wire is one strand and its own outside: two tools may differ by this share on it. */
const SAME_WIDTH = 1.05;

interface Width {
  row: Row;
  cable: string;
  quantity: string;
  metres: number;
}

function widthsOf(readings: readonly Row[], cableOf: ReadonlyMap<string, string>): Width[] {
  return readings.flatMap((row) => {
    const quantity = (row.quantity ?? '').trim().toLowerCase();
    if (quantity !== 'strand_diameter' && quantity !== 'outer_diameter') return [];
    const outcome = cellQuantity((row.value ?? '').trim(), 'length', row.unit ?? '');
    const cable = cableOf.get((row.specimen ?? '').trim());
    return outcome.ok && cable !== undefined ? [{ row, cable, quantity, metres: outcome.value.value }] : [];
  });
}

/**
 * Strand diameters that are wider than every outer diameter read on the same cable: impossible, so refused. One
 * narrow outer diameter among wider ones is not enough: it may be the one that is wrong.
 *
 * @param cableOf cable of each specimen
 */
export function checkStrandWidths(
  readings: readonly Row[],
  cableOf: ReadonlyMap<string, string>,
): Map<Row, CellProblem> {
  const widths = widthsOf(readings, cableOf);
  const widest = new Map<string, number>();
  for (const { cable, quantity, metres } of widths)
    if (quantity === 'outer_diameter') widest.set(cable, Math.max(metres, widest.get(cable) ?? 0));
  const problems = new Map<Row, CellProblem>();
  for (const { row, cable, quantity, metres } of widths) {
    const outer = widest.get(cable);
    if (quantity !== 'strand_diameter' || outer === undefined || metres <= outer * SAME_WIDTH) continue;
    problems.set(row, {
      column: 'value',
      found: `"${`${row.value} ${row.unit ?? ''}`.trim()}", a strand wider than the whole cable ${cable}`,
      expected: 'a strand thinner than the outer diameter read on the same cable',
      advice: 'Check the unit and the decimal point.',
    });
  }
  return problems;
}
