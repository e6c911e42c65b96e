import type { Measured } from '../../../src/findings/schema.ts';
import type { ShelfCable } from '../../../src/findings/shapes/shelf.ts';

/** A figure known to a share of itself. */
export function figure(value: number, unit: string, share: number): Measured {
  const half = 1.959963984540054 * share;
  const interval: [number, number] = [value * Math.exp(-half), value * Math.exp(half)];
  return { value, unit, u: value * share, interval, level: 0.95, from: [] };
}

/** An invented line of the shelf; only what differs is said. */
export function line(trial: string, name: string, more: Partial<ShelfCable> = {}): ShelfCable {
  return {
    trial,
    title: `Trial ${trial}`,
    state: 'open',
    day: '2026-10-03',
    cable: name.toLowerCase().replaceAll(' ', '-'),
    name,
    role: 'compared',
    lot: '',
    shared_name: '',
    supplied: null,
    label: { size: '2 AWG', metal: 'OFC', area_mm2: 33.63 },
    outcome: 'meets',
    metal_found: 'copper',
    conductor_area: figure(33.1, 'mm2', 0.005),
    copper_of_claim: figure(0.98, '1', 0.005),
    resistance_20C: figure(0.53, 'mohm/m', 0.004),
    outer_diameter: figure(12.1, 'mm', 0.003),
    bending_stiffness: null,
    wall: figure(1.9, 'mm', 0.02),
    price_per_m: 12.5,
    currency: 'EUR',
    price_at_one_mohm: figure(6.6, 'EUR mohm/m2', 0.004),
    temperature_C: [19.5, 20.5],
    bent_at_C: null,
    ...more,
  };
}
