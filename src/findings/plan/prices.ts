import { copperPerMetre } from '../../methods/decide/conductorSize.ts';
import { costOf, FOOT, type Price, pricePerMetre } from '../../methods/decide/lengthToBuy.ts';
import { median } from '../../numerics/describe.ts';
import type { Cable } from '../../trial/trial.ts';
import { readTypedNumber } from '../../units/typedNumber.ts';
import { readTypedQuantity } from '../../units/typedQuantity.ts';
import { asksForCopper, readLabel } from '../claims/label.ts';

/** A cable's price as its row says it. */
export interface CablePrice {
  price: Price;
  /** As typed: `USD`, `€`; empty when not stated. */
  currency: string;
}

/** Copper by weight in the larger currencies of one order of magnitude, money per kg. Common practice, no source. */
const USUAL_COPPER_PRICE = 9;
const CURRENCIES_ALIKE = /^(?:|usd|us\$|\$|eur|€|gbp|£|chf|cad|aud)$/i;
/** A price that many times its fellows', or that share of it, is asked about. Common practice, no source. */
const FAR = 2;

const PER: Readonly<Record<string, Price['per']>> = {
  piece: 'piece',
  metre: 'metre',
  meter: 'metre',
  foot: 'foot',
  spool: 'spool',
};

/** The price of a cable; null when none is stated or it cannot be read. A price of nothing in particular is of the bought piece. */
export function priceOf(cable: Cable): CablePrice | null {
  const { row } = cable;
  const amount = readTypedNumber((row.price ?? '').replace(/[$€£]/g, '').trim());
  if (!amount.ok || !(amount.value.value > 0)) return null;
  const per = PER[(row.price_per ?? '').trim().toLowerCase()] ?? 'piece';
  const length = readTypedQuantity(row.price_length ?? '', 'length', row.price_length_unit?.trim() || 'm');
  const known = length.ok ? length.value.value : per === 'piece' ? cable.boughtLength : null;
  const symbol = /[$€£]/.exec(row.price ?? '')?.[0] ?? '';
  return { price: { amount: amount.value.value, per, length: known }, currency: (row.currency ?? '').trim() || symbol };
}

/** What a length of this cable costs, in its own currency; null when the price does not say. */
export function costOfLength(cable: Cable, length: number): { amount: number; currency: string } | null {
  const known = priceOf(cable);
  const amount = known && costOf(known.price, length);
  return known && amount !== null ? { amount, currency: known.currency } : null;
}

export interface PriceFlag {
  code: 'price-under-metal' | 'price-apart';
  cable: string;
  text: string;
}

const money = (amount: number, currency: string) => `${amount.toFixed(2)}${currency ? ` ${currency}` : ''}`;
const perFoot = (perMetre: number) => perMetre * FOOT;

function underMetal(cable: Cable, perMetre: number, currency: string, set: number | null): PriceFlag[] {
  const perKg = set ?? (CURRENCIES_ALIKE.test(currency) ? USUAL_COPPER_PRICE : null);
  const label = readLabel(cable.label);
  if (perKg === null || label.area === null || !asksForCopper(label.metal)) return [];
  const worth = copperPerMetre(label.area) * perKg;
  if (perMetre >= worth) return [];
  const assumed = set === null ? ' (assumed; set copper_price_per_kg)' : '';
  return [
    {
      code: 'price-under-metal',
      cable: cable.cable,
      text: `${cable.name} costs ${money(perFoot(perMetre), currency)} a foot; the copper that its label asks for would cost ${money(perFoot(worth), currency)} at ${money(perKg, currency)} a kg${assumed}. Check the price, its length and its unit.`,
    },
  ];
}

/** Prices that deserve a second look: below the metal's own value, or far from cables of the same label in the same currency. */
export function priceFlags(cables: readonly Cable[], copperPricePerKg: number | null): PriceFlag[] {
  const priced = cables.flatMap((cable) => {
    const known = priceOf(cable);
    const perMetre = known && pricePerMetre(known.price);
    return known && perMetre !== null ? [{ cable, perMetre, currency: known.currency }] : [];
  });
  const flags = priced.flatMap((p) => underMetal(p.cable, p.perMetre, p.currency, copperPricePerKg));
  const alike = (a: (typeof priced)[number], b: (typeof priced)[number]) =>
    a.cable.label.size.trim().toLowerCase() === b.cable.label.size.trim().toLowerCase() && a.currency === b.currency;
  for (const p of priced) {
    const fellows = priced.filter((other) => other !== p && alike(p, other)).map((other) => other.perMetre);
    if (fellows.length < 2) continue;
    const middle = median(fellows);
    if (p.perMetre <= FAR * middle && p.perMetre * FAR >= middle) continue;
    flags.push({
      code: 'price-apart',
      cable: p.cable.cable,
      text: `${p.cable.name} costs ${money(perFoot(p.perMetre), p.currency)} a foot, its fellows about ${money(perFoot(middle), p.currency)}. Check the price, its length and its unit.`,
    });
  }
  return flags;
}
