import type { ReadOutcome } from './reading.ts';
import { readTypedNumber } from './typedNumber.ts';

/** Money as typed: the amount, and the currency as far as one was typed with it. */
export interface Money {
  amount: number;
  /** `USD`, `EUR`, `$` where it says no more; empty where none was typed. */
  currency: string;
}

const WANTED = 'a price, such as 4.29, $4.29, 3,75 USD or 12 €';
const LONGEST = 40;

/** Signs and words that mean one currency; `$` alone may be any dollar. */
const CURRENCY_OF: Readonly<Record<string, string>> = {
  $: '$',
  dollar: '$',
  dollars: '$',
  us$: 'USD',
  usd: 'USD',
  'us dollars': 'USD',
  c$: 'CAD',
  ca$: 'CAD',
  a$: 'AUD',
  au$: 'AUD',
  nz$: 'NZD',
  '€': 'EUR',
  euro: 'EUR',
  euros: 'EUR',
  '£': 'GBP',
  pound: 'GBP',
  pounds: 'GBP',
  fr: 'CHF',
  'fr.': 'CHF',
  sfr: 'CHF',
  zł: 'PLN',
  '¥': '¥',
};

/** Codes of ISO 4217 that cable is bought in, from memory; a number before three other letters is no price (`2 AWG`). */
const CODES: ReadonlySet<string> = new Set(
  (
    'USD EUR GBP CAD AUD NZD CHF SEK NOK DKK ISK PLN CZK HUF RON BGN JPY CNY INR BRL MXN ARS CLP COP PEN ZAR SGD HKD KRW ' +
    'TWD TRY ILS THB PHP MYR IDR VND AED SAR UAH RUB'
  ).split(' '),
);

/** Whole money, cents and mills are never grouped: three digits after a lone comma are thousands, for nobody prices in mills. */
const THOUSANDS = /^(\d{1,3}),(\d{3})$/;

/** A currency as people write it, in one way: `$`, `USD`, `EUR`; a text that is not known as typed; empty for nothing. */
export function currencyOf(text: string): string {
  const plain = text.trim().toLowerCase();
  if (plain === '') return '';
  const known = CURRENCY_OF[plain];
  if (known !== undefined) return known;
  return CODES.has(plain.toUpperCase()) ? plain.toUpperCase() : text.trim();
}

/** Currencies that `$` may stand for. */
export const isDollar = (currency: string): boolean => /^(?:\$|usd|cad|aud|nzd|hkd|sgd)$/i.test(currency);

/**
 * Reads a price as people type it: a number with its currency before or behind, or neither. `3,75 USD`, `$4.29`, `4.29 $`,
 * `€ 12`. An amount below nothing is refused; `free` is nothing.
 *
 * @example readMoney('3,75 USD') // { amount: 3.75, currency: 'USD' }
 */
export function readMoney(text: string): ReadOutcome<Money> {
  const typed = text.trim();
  const refused = { ok: false as const, found: `"${typed.slice(0, LONGEST)}"`, expected: WANTED };
  if (/^(?:free|nothing)$/i.test(typed)) return { ok: true, value: { amount: 0, currency: '' } };
  const parts = /^(\p{L}+\.\s*|[^\d.,+−-]*)([\d.,\s\u00a0\u202f]*\d)\s*[-–]?\s*([^\d]*)$/u.exec(typed);
  if (parts === null || typed.length > LONGEST) return refused;
  const [, before = '', digits = '', behind = ''] = parts;
  const [front, back] = [currencyOf(before), currencyOf(behind.replace(/^[.,]?-+/, ''))];
  if ([front, back].some((one) => one !== '' && one !== '$' && one !== '¥' && !CODES.has(one))) return refused;
  if (front !== '' && back !== '' && front !== back && !(isDollar(front) && isDollar(back))) return refused;
  const amount = readTypedNumber(digits.trim().replace(THOUSANDS, '$1$2'));
  if (!amount.ok) return refused;
  const currency = front === '$' && back !== '' ? back : front || back;
  return { ok: true, value: { amount: amount.value.value, currency } };
}
