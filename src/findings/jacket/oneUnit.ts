import { group } from 'd3-array';
import { findUnit } from '../../units/unit.ts';
import type { Warning } from '../schema.ts';
import type { EnduranceRow } from './readEndurance.ts';

/** `Strokes` and `stroke` are one unit. */
const plain = (unit: string) => unit.trim().toLowerCase().replace(/s$/, '');

/**
 * Rows of one test in one unit: that of most rows. Rows in another unit of the same kind (N and kgf) are converted; others are left out
 * with a sentence, since strokes and seconds do not compare.
 */
export function oneUnit(rows: readonly EnduranceRow[], warnings: Warning[]): EnduranceRow[] {
  const units = [...group(rows, (r) => plain(r.unit)).values()].sort((a, b) => b.length - a.length);
  const [most] = units;
  const { unit, test } = most[0];
  const wanted = findUnit(unit);
  const kept: EnduranceRow[] = [];
  const apart: EnduranceRow[] = [];
  for (const row of rows) {
    const own = findUnit(row.unit);
    if (plain(row.unit) === plain(unit)) kept.push({ ...row, unit });
    else if (wanted && own && own.dimension === wanted.dimension && own.dimension !== 'temperature') {
      const factor = own.toSI(1) / wanted.toSI(1);
      const every = row.inspectedEvery;
      kept.push({ ...row, unit, amount: row.amount * factor, inspectedEvery: every === null ? null : every * factor });
    } else apart.push(row);
  }
  if (apart.length > 0)
    warnings.push({
      code: 'endurance-units-mixed',
      cable: null,
      text: `${test} was recorded in ${unit} and in ${[...new Set(apart.map((r) => r.unit))].join(', ')}, which do not compare: ${apart.map((r) => r.specimen).join(', ')} left out.`,
    });
  return kept;
}
