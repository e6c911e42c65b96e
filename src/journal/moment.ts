import type { ReadOutcome } from '../units/reading.ts';

const MOMENT =
  /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.(\d{1,9}))?)?)?\s*(Z|[+-]\d{2}:?\d{2})?$/i;
const MINUTE = 60_000;

const refused = (found: string, advice?: string): ReadOutcome<number> => ({
  ok: false,
  found,
  expected: 'a date such as 2026-11-25, or a date and time such as 2026-11-25T14:30Z',
  ...(advice ? { advice } : {}),
});

function offsetMinutes(zone: string | undefined): number {
  if (!zone || zone.toUpperCase() === 'Z') return 0;
  const sign = zone.startsWith('-') ? -1 : 1;
  return sign * (Number(zone.slice(1, 3)) * 60 + Number(zone.slice(-2)));
}

const DAYS_REMEMBERED = 1000;
const midnights = new Map<string, number>();

/** Readings come in the order of their days. */
let lastDay = '';
let lastMidnight = Number.NaN;

/** Midnight of the day with which a text begins, written `2026-11-25`, or NaN; a trial has few days and many readings on each. */
function midnightOf(text: string): number {
  if (lastDay !== '' && text.startsWith(lastDay)) return lastMidnight;
  const day = text.slice(0, 10);
  lastMidnight = readMidnight(day);
  lastDay = day;
  return lastMidnight;
}

function readMidnight(day: string): number {
  let midnight = midnights.get(day);
  if (midnight === undefined) {
    const outcome = readAnyMoment(day);
    midnight = outcome.ok ? outcome.value : Number.NaN;
    if (midnights.size >= DAYS_REMEMBERED) midnights.clear();
    midnights.set(day, midnight);
  }
  return midnight;
}

const twoDigits = (text: string, at: number): number => {
  const tens = text.charCodeAt(at) - 48;
  const ones = text.charCodeAt(at + 1) - 48;
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : Number.NaN;
};

/** Characters of the forms that programs write, to the second and to the millisecond. */
const TO_SECONDS = '2026-11-25T14:30:05Z'.length;
const TO_MILLISECONDS = '2026-11-25T14:30:05.250Z'.length;

/** The thousandths in `.250Z`, 0 in `Z`; NaN for anything else. `at`: where the seconds end. */
function thousandths(text: string, at: number): number {
  if (text.length === TO_SECONDS) return text[at] === 'Z' ? 0 : Number.NaN;
  const isForm = text.length === TO_MILLISECONDS && text[at] === '.' && text[at + 4] === 'Z';
  const last = text.charCodeAt(at + 3) - 48;
  return isForm && last >= 0 && last <= 9 ? twoDigits(text, at + 1) * 10 + last : Number.NaN;
}

/** The forms that programs write, `2026-11-25T14:30:05Z` and `…05.250Z`, without the cost of the full reader; NaN for any other. */
export function programMoment(text: string): number {
  if (text[10] !== 'T' || text[13] !== ':' || text[16] !== ':') return Number.NaN;
  const hour = twoDigits(text, 11);
  const minute = twoDigits(text, 14);
  const second = twoDigits(text, 17);
  if (!(hour < 24 && minute < 60 && second < 60)) return Number.NaN;
  return midnightOf(text) + ((hour * 60 + minute) * 60 + second) * 1000 + thousandths(text, 19);
}

/**
 * Reads a date, or a date and time, into milliseconds since 1970-01-01T00:00Z (ISO 8601 as people type it: `T` or a blank
 * between date and time, seconds optional). A time without a zone is taken as UTC, so that every machine reads it alike.
 *
 * Dates in other orders (`11/25/2026`) are refused: they mean different days to different readers.
 */
export function readMoment(text: string): ReadOutcome<number> {
  const quick = programMoment(text);
  return Number.isNaN(quick) ? readAnyMoment(text) : { ok: true, value: quick };
}

function readAnyMoment(text: string): ReadOutcome<number> {
  const match = MOMENT.exec(text.trim());
  if (!match) {
    const slashes = /^\d{1,4}[/.]\d{1,2}[/.]\d{1,4}/.test(text.trim());
    return refused(`"${text.trim()}"`, slashes ? 'Write the year first, then month and day, with hyphens.' : undefined);
  }
  const [, year, month, day, hour = '0', minute = '0', second = '0', fraction = '', zone] = match;
  const midnight = Date.UTC(Number(year), Number(month) - 1, Number(day));
  const made = new Date(midnight);
  const realDay = made.getUTCMonth() === Number(month) - 1 && made.getUTCDate() === Number(day) && Number(year) >= 1900;
  if (!realDay) return refused(`"${text.trim()}", which is no day of the calendar`);
  if (Number(hour) > 23 || Number(minute) > 59 || Number(second) > 59)
    return refused(`"${text.trim()}", which is no time of day`);
  const milliseconds = Number(fraction.padEnd(3, '0').slice(0, 3));
  const clock = ((Number(hour) * 60 + Number(minute)) * 60 + Number(second)) * 1000 + milliseconds;
  return { ok: true, value: midnight + clock - offsetMinutes(zone) * MINUTE };
}

const DAY_MILLISECONDS = 24 * 60 * MINUTE;

/** The last millisecond that a typed moment covers: of a day without a time, its end. `start` is what it was read as. */
export function lastMoment(text: string, start: number): number {
  return text.includes(':') ? start : start + DAY_MILLISECONDS - 1;
}
