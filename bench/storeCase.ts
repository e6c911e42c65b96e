import type { Entry } from '../src/journal/entry.ts';

export { openSqliteStore } from '../src/edge/store/sqlite/open.ts';
export { startedBench } from '../test/support/builtProgram.ts';

/** One entry out of so many says what a cable is. */
const CABLE_EVERY = 250;

/** One entry of a journal, as long as readings usually are. `n` gives the id its place. */
export function readingOf(trial: string, n: number): Entry {
  const time = n.toString(16).padStart(12, '0');
  return {
    id: `${time.slice(0, 8)}-${time.slice(8)}-7000-8000-000000000000`,
    trial,
    kind: n % CABLE_EVERY === 0 ? 'cable' : 'reading',
    at: '2026-05-01T10:00:00.000Z',
    by: 'J. Marsh',
    device: 'bench computer',
    body: n % CABLE_EVERY === 0 ? { cable: `c${n}`, maker: `Cable ${n}`, claimed_size: '2 AWG' } : rowOf(n),
  };
}

function rowOf(n: number): Record<string, string> {
  return {
    reading: `r${n}`,
    specimen: `s${n % 40}`,
    quantity: 'conductor_mass',
    value: (39 + (n % 97) / 100).toFixed(2),
    unit: 'g',
    instrument: 'pocket scale',
    at: '2026-05-01T10:00:00Z',
    temperature: '21.5',
    temperature_unit: 'C',
    by: 'J. Marsh',
  };
}

export function journalOf(trial: string, entries: number): Entry[] {
  return Array.from({ length: entries }, (_, n) => readingOf(trial, n));
}
