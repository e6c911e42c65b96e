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

function wholeNumber(text: string): number | null {
  return /^\d{1,12}$/.test(text) ? Number(text) : null;
}

function wrong(option: string, found: string, expected: string): Failure {
  return new Failure(`${option} was "${found}"; expected ${expected}.`, EXIT.wrongUse);
}
