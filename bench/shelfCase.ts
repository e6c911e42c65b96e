/** An invented shelf of many cables for timing: lines as the bench computer tells them. */
import type { Measured } from '../src/findings/schema.ts';
import type { ShelfCable } from '../src/findings/shapes/shelf.ts';

export { startedBench } from '../test/support/builtProgram.ts';

const MAKERS = ['Alder', 'Birch', 'Cedar', 'Dogwood', 'Elder', 'Fir', 'Gorse', 'Hazel', 'Ivy', 'Juniper'];
const MODELS = ['Boot Run', 'Cord', 'Flex', 'Marine', 'Starter', 'Winch'];
const SIZES: readonly (readonly [string, number])[] = [
  ['4 AWG', 21.15],
  ['2 AWG', 33.63],
  ['1/0 AWG', 53.48],
  ['35 mm2', 35],
  ['4/0', 107.2],
];
const METALS = ['copper', 'tinned copper', 'copper-clad aluminium', null];
const PER_TRIAL = 6;
const DAY_MS = 86_400_000;
const FIRST_DAY = Date.UTC(2018, 0, 1);

const at = <T>(list: readonly T[], n: number): T => list[n % list.length]!;

function figure(value: number, unit: string, share: number): Measured {
  const half = 1.96 * share * value;
  return {
    value,
    unit,
    u: share * value,
    interval: [value - half, value + half],
    level: 0.95,
    from: ['conductor_mass'],
  };
}

/** A number between 0 and 1 that looks like chance and is the same each time. */
const spread = (n: number): number => ((n * 7919) % 1009) / 1009;

function line(n: number): ShelfCable {
  const trial = Math.floor(n / PER_TRIAL);
  const [size, area] = at(SIZES, trial);
  const metal = at(METALS, n);
  // One trial in three measures the same piece of house wire.
  const wire = n % PER_TRIAL === 5 && trial % 3 === 0;
  const held = wire ? 5.2 * (0.99 + 0.02 * spread(trial)) : area * (0.8 + 0.22 * spread(n));
  const ohms = 17.4 / held;
  const price = 3 + 20 * spread(n + 17);
  return {
    trial: `trial-${trial}`,
    title: `Trial ${trial}: ${size}`,
    state: 'open',
    day: new Date(FIRST_DAY + trial * 2 * DAY_MS).toISOString().slice(0, 10),
    cable: `c${n % PER_TRIAL}`,
    name: wire ? 'House wire' : `${at(MAKERS, n)} ${at(MODELS, n >> 2)} ${n % 40}`,
    role: wire ? 'control' : 'compared',
    lot: n % 5 === 0 ? `L${n % 40}` : '',
    shared_name: wire ? 'house wire' : '',
    supplied: n % 9 === 0,
    label: { size, metal: 'OFC', area_mm2: area },
    outcome: at(['meets', 'falls short', 'not settled'] as const, n),
    metal_found: metal,
    conductor_area: figure(held, 'mm2', 0.006),
    copper_of_claim: figure(held / area, '1', 0.006),
    resistance_20C: figure(ohms, 'mohm/m', 0.005),
    outer_diameter: figure(1.5 * Math.sqrt(area) + 3, 'mm', 0.004),
    bending_stiffness: n % 2 === 0 ? figure(0.02 + 0.1 * spread(n + 5), 'N m2', 0.03) : null,
    wall: figure(1.5 + spread(n + 3), 'mm', 0.02),
    price_per_m: price,
    currency: 'EUR',
    price_at_one_mohm: figure(price * ohms, 'EUR mohm/m2', 0.005),
    temperature_C: [18 + 4 * spread(trial), 19 + 4 * spread(trial)],
    bent_at_C: n % 2 === 0 ? 20 : null,
  };
}

/** So many cables, six to a trial, as one answer of the bench computer. */
export function manyLines(count: number) {
  const trials = new Map<string, ShelfCable[]>();
  for (let n = 0; n < count; n += 1) {
    const made = line(n);
    trials.set(made.trial, [...(trials.get(made.trial) ?? []), made]);
  }
  return {
    trials: [...trials].map(([trial, cables]) => ({ trial, mark: '1', cables })),
    left: 0,
    gone: [],
    damaged: [],
  };
}
