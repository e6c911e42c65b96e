/**
 * Source: critical values computed independently (scipy) from Grubbs' formula; they agree to all printed digits with F. E. Grubbs,
 * G. Beck, Technometrics 14 (1972), and ISO 5725-2, Table 5 (n = 10: 2.176, 2.290, 2.410, 2.482).
 */
import { describe, expect, it } from 'vitest';
import { grubbsCritical } from '../../src/numerics/outlying.ts';
import { expectClose } from '../tolerance.ts';

/** n, then one-sided 5 %, two-sided 5 %, one-sided 1 %, two-sided 1 %. A one-sided level is twice that level two-sided. */
const TABLE = [
  [3, 1.153118, 1.154305, 1.154637, 1.154685],
  [4, 1.4625, 1.48125, 1.4925, 1.49625],
  [5, 1.671386, 1.715037, 1.748857, 1.763678],
  [6, 1.82212, 1.887145, 1.944245, 1.972817],
  [7, 1.938135, 2.019969, 2.097304, 2.139106],
  [8, 2.031652, 2.126645, 2.220833, 2.274365],
  [9, 2.109562, 2.215004, 2.323148, 2.38681],
  [10, 2.176068, 2.289954, 2.409725, 2.482083],
  [12, 2.284953, 2.41156, 2.549417, 2.635733],
  [15, 2.409038, 2.548308, 2.704855, 2.806105],
  [20, 2.556581, 2.708246, 2.883821, 3.000804],
  [25, 2.662873, 2.821681, 3.008645, 3.135328],
  [30, 2.745132, 2.908473, 3.102897, 3.236078],
  [50, 2.956975, 3.128247, 3.336624, 3.482462],
  [100, 3.20952, 3.384083, 3.600196, 3.754004],
];

describe("Grubbs' critical values", () => {
  it.each(TABLE)('n = %i', (n, oneSided5, twoSided5, oneSided1, twoSided1) => {
    const wanted: [number, number][] = [
      [0.1, oneSided5],
      [0.05, twoSided5],
      [0.02, oneSided1],
      [0.01, twoSided1],
    ];
    for (const [level, value] of wanted)
      expectClose(grubbsCritical(n, level), value, { absolute: 6e-7, because: `two-sided level ${level}` });
    expect(Math.abs(1.01 * grubbsCritical(n, 0.05) - twoSided5)).toBeGreaterThan(6e-7);
  });
});
