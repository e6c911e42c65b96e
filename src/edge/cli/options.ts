import { DEVICE_ROLES, type DeviceRole } from '../store/devices.ts';
import { EXIT, Failure } from './failure.ts';

const LOWEST_LEVEL = 0.5;
const HIGHEST_LEVEL = 0.9999;
const MOST_DRAWS = 100_000_000;
const LAST_PORT = 65_535;

/** `0.95` or `95%` → 0.95: the share of cases in which an interval is to hold the true value. */
export function readLevel(text: string): number {
  const percent = /^(.+)%$/.exec(text.trim());
  const level = percent ? Number(percent[1]) / 100 : Number(text);
  if (text.trim() !== '' && level >= LOWEST_LEVEL && level <= HIGHEST_LEVEL) return level;
  throw wrong('--level', text, `a number from ${LOWEST_LEVEL} to ${HIGHEST_LEVEL}, such as 0.95`);
}

/** `auto`, or how many random draws; 0 for none. */
export function readDraws(text: string): number | 'auto' {
  if (text === 'auto') return 'auto';
  const draws = wholeNumber(text);
  if (draws !== null && draws <= MOST_DRAWS) return draws;
  throw wrong('--draws', text, `auto, or a whole number up to ${MOST_DRAWS}`);
}

export function readPort(text: string): number {
  const port = wholeNumber(text);
  if (port !== null && port <= LAST_PORT) return port;
  throw wrong('--port', text, `a whole number from 0 to ${LAST_PORT}`);
}

export function readRole(text: string): DeviceRole {
  const role = DEVICE_ROLES.find((one) => one === text);
  if (role !== undefined) return role;
  throw wrong('--role', text, `one of ${DEVICE_ROLES.join(', ')}`);
}

/** A name as a browser writes it in front of the port (RFC 1123 §2.1): letters, digits, hyphens and dots. Adds to the names before. */
export function readHost(text: string, before: readonly string[]): string[] {
  if (/^[a-z\d]([a-z\d.-]{0,251}[a-z\d])?$/i.test(text)) return [...before, text.toLowerCase()];
  throw wrong('--host', text, 'a name without port or slashes, such as bench.local');
}

/** Units of the table; what is left out is metric. */
export interface TableUnits {
  area?: 'mm2' | 'awg' | 'kcmil';
  length?: 'mm' | 'in';
  perLength?: 'm' | 'ft';
}

const UNITS: Readonly<Record<string, TableUnits>> = {
  mm2: { area: 'mm2' },
  awg: { area: 'awg' },
  kcmil: { area: 'kcmil' },
  mm: { length: 'mm' },
  in: { length: 'in' },
  m: { perLength: 'm' },
  ft: { perLength: 'ft' },
};

/** `awg,in,ft` → one unit of each kind. */
export function readUnits(text: string): TableUnits {
  const words = text
    .toLowerCase()
    .split(',')
    .map((word) => word.trim());
  const units = Object.assign({}, ...words.map((word) => UNITS[word] ?? {})) as TableUnits;
  // A word that is unknown, or two of one kind, leave fewer units than words.
  if (Object.keys(units).length === words.length) return units;
  throw wrong('--units', text, 'mm2, awg or kcmil; mm or in; m or ft, with commas between, such as awg,in,ft');
}

function wholeNumber(text: string): number | null {
  return /^\d{1,12}$/.test(text) ? Number(text) : null;
}

function wrong(option: string, found: string, expected: string): Failure {
  return new Failure(`${option} was "${found}"; expected ${expected}.`, EXIT.wrongUse);
}
