import { copperPerMetre } from '../../methods/decide/conductorSize.ts';
import { costOf, FOOT, type Price, pricePerMetre } from '../../methods/decide/lengthToBuy.ts';
import { median } from '../../numerics/describe.ts';
import type { Cable } from '../../trial/trial.ts';
import { currencyOf, isDollar, readMoney } from '../../units/moneyText.ts';
import { readTypedQuantity } from '../../units/typedQuantity.ts';
import { asksForCopper, readLabel } from '../claims/label.ts';

/** A cable's price as its row says it. */
export interface CablePrice {
  price: Price;
  /** In one way: `USD`, `EUR`, `$`; empty when nothing tells it. */
  currency: string;
}

/** Copper by weight in the larger currencies of one order of magnitude, money per kg. Common practice, no source. */
const USUAL_COPPER_PRICE = 9;
const CURRENCIES_ALIKE = /^(?:|usd|\$|eur|gbp|chf|cad|aud)$/i;
/** A price that many times its fellows', or that share of it, is asked about. Common practice, no source. */
const FAR = 2;

const PER: Readonly<Record<string, Price['per']>> = {
  piece: 'piece',
  metre: 'metre',
  meter: 'metre',
  foot: 'foot',
  spool: 'spool',
};

/** The currency of a cable by its own row: what its column says, else what stands in the price. */
function ownCurrency({ row }: Cable): string {
  const money = readMoney(row.price ?? '');
  const inPrice = money.ok ? money.value.currency : '';
  const stated = currencyOf(row.currency ?? '');
  return stated === '$' && inPrice !== '' ? inPrice : stated || inPrice;
}

/**
 * The currency of a cable among the others of its trial: `$` is the one dollar that the others name, and a price without a
 * currency is in the one that all others are in. Where that is not to be told it stays as it is.
 */
function currencyAmong(cable: Cable, cables: readonly Cable[]): string {
  const own = ownCurrency(cable);
  if (own !== '' && own !== '$') return own;
  const others = new Set(cables.map(ownCurrency).filter((one) => one !== '' && one !== '$'));
  const dollars = [...others].filter(isDollar);
  if (own === '$') return dollars.length === 1 ? dollars[0]! : own;
  const all = new Set([
    ...others,
    ...(dollars.length === 0 && cables.some((c) => ownCurrency(c) === '$') ? ['$'] : []),
  ]);
  return all.size === 1 ? [...all][0]! : '';
}

/**
 * The price of a cable; null when none is stated or it cannot be read. A price of nothing in particular is of the bought
 * piece.
 *
 * @param cables of the trial, which tell the currency where the cable's own row does not
 */
export function priceOf(cable: Cable, cables: readonly Cable[] = [cable]): CablePrice | null {
  const { row } = cable;
  const money = readMoney(row.price ?? '');
  if (!money.ok || !(money.value.amount > 0)) return null;
  const per = PER[(row.price_per ?? '').trim().toLowerCase()] ?? 'piece';
  const length = readTypedQuantity(row.price_length ?? '', 'length', row.price_length_unit?.trim() || 'm');
  const known = length.ok ? length.value.value : per === 'piece' ? cable.boughtLength : null;
  return { price: { amount: money.value.amount, per, length: known }, currency: currencyAmong(cable, cables) };
}

/** What a length of this cable costs; null when the price does not say. */
export function costOfLength(
  cable: Cable,
  length: number,
  cables: readonly Cable[] = [cable],
): { amount: number; currency: string } | null {
  const known = priceOf(cable, cables);
  const amount = known && costOf(known.price, length);
  return known && amount !== null ? { amount, currency: known.currency } : null;
}

/** Cables whose price is there but cannot be read, so that no total has it. */
export const unreadPrices = (cables: readonly Cable[]): Cable[] =>
  cables.filter(({ row }) => (row.price ?? '').trim() !== '' && !readMoney(row.price ?? '').ok);

/** The currencies of the trial's prices, each once. */
export function currenciesOf(cables: readonly Cable[]): string[] {
  const all = cables.flatMap((cable) => priceOf(cable, cables)?.currency ?? []);
  return [...new Set(all)].sort();
}

export interface PriceFlag {
  code: 'price-under-metal' | 'price-apart' | 'price-not-read' | 'mixed-currencies';
  cable: string | null;
  text: string;
}

const money = (amount: number, currency: string) => `${amount.toFixed(2)}${currency ? ` ${currency}` : ''}`;

/** Lengths that a row counts in feet or inches. */
const IN_FEET = /^(?:ft|foot|feet|in|inch|inches|['′"″])$/i;

/** A price for one length as the cable's own row counts lengths: `1.44 EUR a foot`, or a metre. */
function priceOfLength({ row }: Cable): (perMetre: number, currency: string) => string {
  const units = [row.price_per, row.price_length_unit, row.bought_length_unit];
  const feet = units.some((unit) => IN_FEET.test((unit ?? '').trim()));
  return (perMetre, currency) =>
    feet ? `${money(perMetre * FOOT, currency)} a foot` : `${money(perMetre, currency)} a metre`;
}

function underMetal(cable: Cable, perMetre: number, currency: string, set: number | null): PriceFlag[] {
  const perKg = set ?? (CURRENCIES_ALIKE.test(currency) ? USUAL_COPPER_PRICE : null);
  const label = readLabel(cable.label);
  if (perKg === null || label.area === null || !asksForCopper(label.metal)) return [];
  const worth = copperPerMetre(label.area) * perKg;
  if (perMetre >= worth) return [];
  const assumed = set === null ? ' (assumed; set copper_price_per_kg)' : '';
  const of = priceOfLength(cable);
  return [
    {
      code: 'price-under-metal',
      cable: cable.cable,
      text: `${cable.name} costs ${of(perMetre, currency)}; the copper that its label asks for would cost ${of(worth, currency)} at ${money(perKg, currency)} a kg${assumed}. Check the price, its length and its unit.`,
    },
  ];
}

function notRead(cables: readonly Cable[]): PriceFlag[] {
  return unreadPrices(cables).map((cable) => ({
    code: 'price-not-read' as const,
    cable: cable.cable,
    text: `${cable.name}: the price “${(cable.row.price ?? '').trim()}” cannot be read, so no total has it. Type it like 4.29, $4.29 or 3,75 USD.`,
  }));
}

function mixed(cables: readonly Cable[]): PriceFlag[] {
  const all = currenciesOf(cables);
  if (all.length < 2) return [];
  const words = all.map((currency) => currency || 'no currency');
  const text = `Prices are in ${words.slice(0, -1).join(', ')} and ${words.at(-1)}: their totals are given apart, and none is held against another. Say one currency in every row if they are one.`;
  return [{ code: 'mixed-currencies', cable: null, text }];
}

/** Prices that deserve a second look: not read, in several currencies, below the metal's own value, or far from cables of the same label in the same currency. */
export function priceFlags(cables: readonly Cable[], copperPricePerKg: number | null): PriceFlag[] {
  const priced = cables.flatMap((cable) => {
    const known = priceOf(cable, cables);
    const perMetre = known && pricePerMetre(known.price);
    return known && perMetre !== null ? [{ cable, perMetre, currency: known.currency }] : [];
  });
  const flags = [...notRead(cables), ...mixed(cables)];
  flags.push(...priced.flatMap((p) => underMetal(p.cable, p.perMetre, p.currency, copperPricePerKg)));
  const alike = (a: (typeof priced)[number], b: (typeof priced)[number]) =>
    a.cable.label.size.trim().toLowerCase() === b.cable.label.size.trim().toLowerCase() && a.currency === b.currency;
  for (const p of priced) {
    const fellows = priced.filter((other) => other !== p && alike(p, other)).map((other) => other.perMetre);
    if (fellows.length < 2) continue;
    const middle = median(fellows);
    if (p.perMetre <= FAR * middle && p.perMetre * FAR >= middle) continue;
    const of = priceOfLength(p.cable);
    flags.push({
      code: 'price-apart',
      cable: p.cable.cable,
      text: `${p.cable.name} costs ${of(p.perMetre, p.currency)}, its fellows about ${of(middle, p.currency)}. Check the price, its length and its unit.`,
    });
  }
  return flags;
}
