import type { Entry } from '../../src/journal/entry.ts';

/** A UUIDv7-shaped id whose order is that of `n`. */
export function idOf(n: number): string {
  const time = n.toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-000000000000`;
}

export function entryOf(n: number, changes: Partial<Entry> = {}): Entry {
  return {
    id: idOf(n),
    trial: 'fen',
    kind: 'reading',
    at: '2026-05-01T10:00:00.000Z',
    by: 'J. Marsh',
    device: 'bench',
    body: {
      reading: `r${n}`,
      specimen: 'q1',
      quantity: 'conductor_mass',
      value: '39.27',
      unit: 'g',
      note: 'ß 電 🧵 "quoted"\nnext',
    },
    ...changes,
  };
}
