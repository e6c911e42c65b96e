/**
 * Quantiles and tails of the normal, Student t, χ² and F distributions.
 *
 * Source of the tables: computed independently (scipy), 6 decimals; the t table has the columns of JCGM 100:2008, Table G.2. Source of
 * the long digits: computed independently (mpmath, 40 digits).
 */
import { describe, expect, it } from 'vitest';
import {
  chiSquareCdf,
  chiSquareQuantile,
  chiSquareUpperTail,
  fUpperTail,
  normalCdf,
  normalQuantile,
  studentTCdf,
  studentTLogPdf,
  studentTQuantile,
} from '../../src/numerics/distributions.ts';
import { expectClose, expectDigits } from '../tolerance.ts';

/** 0.84134…, 0.97725… and 0.99865… are Φ(1), Φ(2) and Φ(3): two-sided 68.27 %, 95.45 % and 99.73 %. */
const T_PROBABILITIES = [0.8413447460685429, 0.95, 0.975, 0.9772498680518208, 0.99, 0.995, 0.9986501019683699];
const T_TABLE: [number, number[]][] = [
  [1, [1.837337, 6.313752, 12.706205, 13.96773, 31.820516, 63.656741, 235.801498]],
  [2, [1.321277, 2.919986, 4.302653, 4.526537, 6.964557, 9.924843, 19.206744]],
  [3, [1.196881, 2.353363, 3.182446, 3.306822, 4.540703, 5.840909, 9.21894]],
  [4, [1.141627, 2.131847, 2.776445, 2.869309, 3.746947, 4.604095, 6.620206]],
  [5, [1.110507, 2.015048, 2.570582, 2.648649, 3.36493, 4.032143, 5.50708]],
  [6, [1.090569, 1.94318, 2.446912, 2.516524, 3.142668, 3.707428, 4.904065]],
  [7, [1.076713, 1.894579, 2.364624, 2.428805, 2.997952, 3.499483, 4.529974]],
  [8, [1.066528, 1.859548, 2.306004, 2.366416, 2.896459, 3.355387, 4.276633]],
  [9, [1.058728, 1.833113, 2.262157, 2.319806, 2.821438, 3.249836, 4.094255]],
  [10, [1.052562, 1.812461, 2.228139, 2.283678, 2.763769, 3.169273, 3.956937]],
  [12, [1.043439, 1.782288, 2.178813, 2.231348, 2.680998, 3.05454, 3.764277]],
  [15, [1.034463, 1.75305, 2.13145, 2.181163, 2.60248, 2.946713, 3.586423]],
  [16, [1.032242, 1.745884, 2.119905, 2.16894, 2.583487, 2.920782, 3.544128]],
  [20, [1.025633, 1.724718, 2.085963, 2.133025, 2.527977, 2.84534, 3.422151]],
  [25, [1.020404, 1.708141, 2.059539, 2.105088, 2.485107, 2.787436, 3.329635]],
  [30, [1.016947, 1.697261, 2.042272, 2.086844, 2.457262, 2.749996, 3.270334]],
  [50, [1.0101, 1.675905, 2.008559, 2.051248, 2.403272, 2.677793, 3.157148]],
  [100, [1.005025, 1.660234, 1.983972, 2.025309, 2.364217, 2.625891, 3.076756]],
];

describe('Student t', () => {
  it.each(T_TABLE)('quantiles for %i degrees of freedom', (dof, row) => {
    row.forEach((t, k) => {
      expectClose(studentTQuantile(T_PROBABILITIES[k], dof), t, { absolute: 6e-7, because: `p ${T_PROBABILITIES[k]}` });
      expectClose(studentTCdf(t, dof), T_PROBABILITIES[k], { absolute: 4e-7, because: 'and back' });
    });
    expect(Math.abs(studentTQuantile(0.975, dof * 1.01) - row[2])).toBeGreaterThan(6e-7);
  });

  it('to fifteen digits, for any degrees of freedom', () => {
    const table: [number, number, number][] = [
      [0.975, 1, 12.7062047361747],
      [0.975, 2, 4.302652729749464],
      [0.995, 3, 5.840909309733357],
      [0.975, 4.7, 2.62072607535317],
      [0.975, 9, 2.262157162798206],
      [0.995, 16, 2.9207816224251],
      [0.975, 100, 1.983971518523552],
    ];
    for (const [p, dof, t] of table) expectDigits(studentTQuantile(p, dof), t, 13, `t ${p} ${dof}`);
  });

  it('far tails', () => {
    const table: [number, number, number][] = [
      [5, 3, 0.00769621903665115],
      [20, 4.7, 4.970162181035146e-6],
      [50, 9, 1.284476455437399e-12],
      [8, 30, 3.132911237850379e-9],
    ];
    for (const [t, dof, tail] of table) expectDigits(studentTCdf(-t, dof), tail, 12, `tail ${t} ${dof}`);
  });

  it('logarithm of the density', () => {
    const table: [number, number, number][] = [
      [0, 3, -1.0008888496235098],
      [1, 3, -1.5762529945270716],
      [2.5, 7.3, -3.519905914619879],
      [1, 200, -1.4214364498559224],
      [3, 1e5, -5.418783543328974],
    ];
    for (const [t, dof, value] of table) expectDigits(studentTLogPdf(t, dof), value, 14, `density ${t} ${dof}`);
  });
});

describe('normal', () => {
  it('quantiles', () => {
    const table: [number, number][] = [
      [0.8, 0.8416212335729142],
      [0.9, 1.2815515655446],
      [0.95, 1.644853626951473],
      [0.975, 1.959963984540054],
      [0.99, 2.326347874040841],
      [0.999, 3.090232306167814],
      [1e-9, -5.997807015007687],
      [1e-15, -7.941345326170997],
      [1e-100, -21.273453560965326],
      [1e-300, -37.0470962993612],
    ];
    for (const [p, z] of table) expectDigits(normalQuantile(p), z, 14, `normal ${p}`);
  });

  it('tails', () => {
    const table: [number, number][] = [
      [1.4, 0.08075665923377107],
      [3, 0.001349898031630095],
      [6, 9.86587645037698e-10],
      [10, 7.619853024160525e-24],
      [20, 2.753624118606234e-89],
      [35, 1.124910706472406e-268],
    ];
    for (const [z, tail] of table) expectDigits(normalCdf(-z), tail, 12, `normal tail ${z}`);
  });
});

describe('χ²', () => {
  const PROBABILITIES = [0.025, 0.05, 0.95, 0.975, 0.99];
  it.each([
    [1, [0.000982, 0.003932, 3.841459, 5.023886, 6.634897]],
    [2, [0.050636, 0.102587, 5.991465, 7.377759, 9.21034]],
    [4, [0.484419, 0.710723, 9.487729, 11.143287, 13.276704]],
    [9, [2.700389, 3.325113, 16.918978, 19.022768, 21.665994]],
    [20, [9.590777, 10.850811, 31.410433, 34.169607, 37.566235]],
  ])('quantiles for %i degrees of freedom', (dof, row) => {
    row.forEach((x, k) => {
      expectClose(chiSquareQuantile(PROBABILITIES[k], dof), x, { absolute: 6e-7, because: `p ${PROBABILITIES[k]}` });
      expectClose(chiSquareCdf(x, dof), PROBABILITIES[k], { relative: 3e-4, because: 'and back, six decimals of x' });
    });
  });

  it('upper tails, however small', () => {
    const table: [number, number, number][] = [
      [3.5, 1, 0.06136882913940217],
      [30, 2, 3.059023205018258e-7],
      [100, 4, 9.83662422461598e-21],
      [500, 9, 5.749413903044689e-102],
      [0.01, 3, 0.9997348349413444],
      [300, 7.5, 1.593472230735488e-60],
    ];
    for (const [x, dof, tail] of table) expectDigits(chiSquareUpperTail(x, dof), tail, 12, `χ² tail ${x} ${dof}`);
    expect(chiSquareUpperTail(2000, 20), '1.4e-413 is below the smallest double').toBe(0);
  });
});

describe('F', () => {
  it('upper tails', () => {
    const table: [number, number, number, number][] = [
      [4.964602743730711, 1, 10, 0.05000000000000006],
      [3, 2, 27, 0.0665997544260565],
      [50, 3, 8, 1.584343068096786e-5],
      [1.18046237440255, 4, 20, 0.3494474934021927],
      [300, 5, 66, 5.860566714613514e-44],
    ];
    for (const [x, a, b, tail] of table) expectDigits(fUpperTail(x, a, b), tail, 12, `F tail ${x} ${a} ${b}`);
  });

  it('5 % points of the table', () => {
    const table: [number, number, number][] = [
      [4.964603, 1, 10],
      [3.354131, 2, 27],
      [2.866081, 4, 20],
      [2.353809, 5, 66],
      [4.066181, 3, 8],
    ];
    for (const [x, a, b] of table) expectClose(fUpperTail(x, a, b), 0.05, { absolute: 1e-7, because: `F ${a} ${b}` });
  });
});
