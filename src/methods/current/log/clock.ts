/** Times as loggers write them, in seconds. Only differences matter: the day from which they count is arbitrary. */

const SECONDS_IN_DAY = 86_400;
/** A number this large counts seconds since 1970, one a thousand times larger milliseconds. */
const EPOCH_SECONDS = 1e9;
const EPOCH_MILLISECONDS = 1e12;

/** Days since 1 March 0000 in the Gregorian calendar, by whole-number arithmetic. */
function dayNumber(year: number, month: number, day: number): number {
  const y = month > 2 ? year : year - 1;
  const m = month > 2 ? month - 3 : month + 9;
  return (
    365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + Math.floor((153 * m + 2) / 5) + day - 1
  );
}

const DATE_FIRST_YEAR = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})/;
const DATE_LAST_YEAR = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{2,4})/;
const TIME = /(?:^|[T\s])(\d{1,3}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?\s*([AaPp]\.?[Mm]\.?)?\s*(?:Z|[+-]\d{2}:?\d{2})?$/;

/**
 * Seconds of a clock time, a date with a time, or a count since 1970; null when it is none of them. A date such as 05/10/2026
 * is read day first unless that gives no day: a log seldom crosses a month, and within one only the day matters.
 *
 * @example clockSeconds('13:05:20.5') // 47120.5
 */
export function clockSeconds(text: string): number | null {
  const t = text.trim();
  if (/^\d+(?:[.,]\d+)?$/.test(t)) {
    const value = Number(t.replace(',', '.'));
    if (value >= EPOCH_MILLISECONDS) return value / 1000;
    return value >= EPOCH_SECONDS ? value : null;
  }
  const time = TIME.exec(t);
  const date = dateOf(t);
  if (!time) return null;
  const half = time[4]?.[0]?.toLowerCase();
  const hour = Number(time[1]);
  const minute = Number(time[2]);
  const second = Number((time[3] ?? '0').replace(',', '.'));
  if (minute > 59 || second >= 61 || (half && (hour < 1 || hour > 12))) return null;
  const hours = half ? (hour % 12) + (half === 'p' ? 12 : 0) : hour;
  return (date ?? 0) * SECONDS_IN_DAY + hours * 3600 + minute * 60 + second;
}

/** The number of the day that a text begins with; null when it begins with none. */
export function dateOf(text: string): number | null {
  const first = DATE_FIRST_YEAR.exec(text);
  if (first) return validDay(Number(first[1]), Number(first[2]), Number(first[3]));
  const last = DATE_LAST_YEAR.exec(text);
  if (!last) return null;
  const [a, b, y] = [Number(last[1]), Number(last[2]), Number(last[3])];
  const year = y < 100 ? 2000 + y : y;
  return b > 12 ? validDay(year, a, b) : validDay(year, b, a);
}

function validDay(year: number, month: number, day: number): number | null {
  return month >= 1 && month <= 12 && day >= 1 && day <= 31 ? dayNumber(year, month, day) : null;
}
