/** A weightless cantilever with a load at its tip: data/elastica-end-load.csv names the sources. The integrator is what is held. */
import { describe, it } from 'vitest';
import { stiffnessFromPush } from '../../src/methods/flex/push.ts';
import { integrateUntil } from '../../src/numerics/ode.ts';
import { brentRoot } from '../../src/numerics/roots.ts';
import { expectClose } from '../tolerance.ts';
import { readTable } from './readTable.ts';

/** θ″ = −α cos θ from the free end; β = 90° − θ, lengths in √α. */
function endLoad(tip: number) {
  const { x: u, y } = integrateUntil(
    (_u, v, d) => {
      d[0] = v[1];
      d[1] = Math.sin(v[0]);
      d[2] = Math.cos(v[0]);
      d[3] = Math.sin(v[0]);
    },
    [Math.PI / 2 - tip, 0, 0, 0],
    0,
    30,
    (v) => v[0] - Math.PI / 2,
    { tolerance: 1e-13 },
  );
  return { alpha: u * u, drop: y[2] / u, reach: y[3] / u };
}

describe('load at the tip', () => {
  const table = readTable('elastica-end-load.csv');
  it.each(table.alpha.map((alpha, i) => ({ alpha, i })))('α = $alpha', ({ alpha, i }) => {
    const tip = brentRoot((t) => endLoad(t).alpha - alpha, 1e-3, Math.PI / 2 - 1e-5, { tolerance: 1e-15 });
    expectClose(tip, table.tip_rad[i], { absolute: 5.1e-10, because: 'half of the last printed digit' });
    const { drop, reach } = endLoad(tip);
    expectClose(drop, table.drop[i], { relative: 1e-9 });
    expectClose(reach, table.reach[i], { relative: 1e-9 });
  });

  it('tends to P L³ / 3 EI', () => {
    const { alpha, drop } = endLoad(1e-3);
    expectClose(drop, alpha / 3, { relative: 1e-6 });
  });
});

describe('a push in the middle of a span', () => {
  it('P = 48 EI δ / L³', () => {
    // Exact beam theory: 0.5 N m² over 0.3 m is 888.9 N/m.
    expectClose(stiffnessFromPush((48 * 0.5) / 0.3 ** 3, 0.3), 0.5, { relative: 1e-14 });
  });
});
