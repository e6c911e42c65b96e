import { FOOT, type SellersRule } from '../../methods/decide/lengthToBuy.ts';
import { readTypedNumber } from '../../units/typedNumber.ts';
import { readTypedQuantity } from '../../units/typedQuantity.ts';

/** What may be done to the cables of a trial, in the words of the `methods` setting. */
export const PLAN_METHODS = ['ohms', 'bend', 'weigh', 'strands', 'eye', 'wall', 'abuse'] as const;
export type PlanMethod = (typeof PLAN_METHODS)[number];

/** Words that stand for several methods. */
const TOGETHER: Readonly<Record<string, readonly PlanMethod[]>> = {
  inside: ['ohms', 'weigh', 'strands', 'eye'],
  jacket: ['wall', 'abuse'],
};

/** Acts of bending that a plan may want beside the droop. */
export const BEND_WISHES = ['push', 'coil', 'spring', 'judge'] as const;
export type BendWish = (typeof BEND_WISHES)[number];

/** The acts of bending that a text names beside the droop. */
export function bendWishesIn(text: string): BendWish[] {
  const words = text.toLowerCase().split(/[\s,;+]+/);
  return BEND_WISHES.filter((wish) => words.includes(wish));
}

/** The word of the `methods` setting for ohms by volts and amps. */
export const FOUR_WIRE_WISH = 'four-wire';

const fourWireIn = (text: string): boolean =>
  text
    .toLowerCase()
    .split(/[\s,;+]+/)
    .includes(FOUR_WIRE_WISH);

/** What is planned, with a default for everything: SI units, money in whatever currency the prices have. */
export interface PlanSettings {
  methods: ReadonlySet<PlanMethod>;
  bendWishes: ReadonlySet<BendWish>;
  /** Ohms by volts and amps, several currents and both ways round, beside or instead of a meter’s. */
  fourWire: boolean;
  /** Shortfall that the plan is to show, relative. */
  shortfall: number;
  repeats: number;
  /** Pieces to take apart of each cable. */
  specimensEach: number;
  bendPieces: number;
  abusePieces: number;
  /** m */
  sawLoss: number;
  /** m; null: computed from size and tools. */
  apartLength: number | null;
  bendLength: number | null;
  /** m; 0: none is kept back. */
  keptLength: number;
  abuseLength: number;
  working: 'by quantity' | 'by specimen';
  blindHow: string;
  seller: SellersRule;
  /** Money per kg of copper; null: the usual one for currencies that have one. */
  copperPricePerKg: number | null;
  /** What the cables are supposed to be made of when the plan's power is worked out. */
  metal: 'either' | 'copper' | 'tinned copper';
}

/** Common practice, no source: all of them may be changed by a row of plan.csv. */
const USUAL = { shortfall: 0.05, repeats: 3, specimensEach: 1, sawLoss: 0.002, keptLength: 0.3, abuseLength: 0.2 };
const USUAL_METHODS: readonly PlanMethod[] = ['ohms', 'bend', 'weigh', 'strands', 'eye', 'wall'];
const ABUSED_WHEN_WANTED = 3;
/** More pieces or repeats than this is a slip of the keyboard. */
const MOST = 100;

type Typed = Readonly<Record<string, string>>;

function numberIn(typed: Typed, name: string, usual: number, least: number, most: number): number {
  const outcome = readTypedNumber(typed[name] ?? '');
  if (!outcome.ok || outcome.value.value < least || outcome.value.value > most) return usual;
  return outcome.value.value;
}

const countIn = (typed: Typed, name: string, usual: number, least = 1) =>
  Math.round(numberIn(typed, name, usual, least, MOST));

/** Longest length that a setting in mm is believed, mm: a spool of 100 m. */
const MOST_MILLIMETRES = 1e5;

function millimetresIn(typed: Typed, name: string): number | null {
  const value = numberIn(typed, name, Number.NaN, 0, MOST_MILLIMETRES);
  return Number.isNaN(value) ? null : value / 1000;
}

/** The methods that a text names, in any order, parted by commas or blanks; unknown words are passed over. */
export function methodsIn(text: string): PlanMethod[] {
  const words = text.toLowerCase().split(/[\s,;+]+/);
  const named = words.flatMap((word) => TOGETHER[word] ?? PLAN_METHODS.filter((m) => m === word));
  return PLAN_METHODS.filter((m) => named.includes(m));
}

function sellerIn(typed: Typed): SellersRule {
  const soldIn = (typed.sold_in ?? '').trim().toLowerCase();
  const step = /^(?:feet|foot|ft)$/.test(soldIn) ? FOOT : /^(?:metres?|meters?|m)$/.test(soldIn) ? 1 : 0;
  const least = readTypedQuantity(typed.sold_least ?? '', 'length');
  return { step, least: least.ok ? least.value.value : 0 };
}

function metalIn(text: string): PlanSettings['metal'] {
  const metal = text.trim().toLowerCase();
  if (metal === 'copper' || metal === 'bare' || metal === 'bare copper') return 'copper';
  return metal === 'tinned' || metal === 'tinned copper' ? 'tinned copper' : 'either';
}

/** Reads the settings of a trial; what is blank or cannot be read stands at its default. */
export function planSettings(typed: Typed): PlanSettings {
  const named = methodsIn(typed.methods ?? '');
  const methods = new Set(named.length > 0 ? named : USUAL_METHODS);
  const bendWishes = new Set(bendWishesIn(typed.methods ?? ''));
  const bends = methods.has('bend') || bendWishes.size > 0;
  const specimensEach = countIn(typed, 'specimens_each', USUAL.specimensEach);
  const price = numberIn(typed, 'copper_price_per_kg', Number.NaN, Number.MIN_VALUE, Number.MAX_VALUE);
  return {
    methods,
    bendWishes,
    fourWire: fourWireIn(typed.methods ?? ''),
    shortfall: numberIn(typed, 'shortfall', USUAL.shortfall, 0.001, 0.9),
    repeats: countIn(typed, 'repeats', USUAL.repeats),
    specimensEach,
    bendPieces: bends ? countIn(typed, 'bend_pieces', specimensEach, 0) : 0,
    abusePieces: methods.has('abuse') ? countIn(typed, 'abuse_pieces', ABUSED_WHEN_WANTED, 0) : 0,
    sawLoss: millimetresIn(typed, 'saw_loss_mm') ?? USUAL.sawLoss,
    apartLength: millimetresIn(typed, 'apart_mm') || null,
    bendLength: millimetresIn(typed, 'bend_mm') || null,
    keptLength: millimetresIn(typed, 'kept_mm') ?? USUAL.keptLength,
    abuseLength: millimetresIn(typed, 'abuse_mm') || USUAL.abuseLength,
    working: (typed.working ?? '').trim().toLowerCase() === 'by specimen' ? 'by specimen' : 'by quantity',
    blindHow: (typed.blind_how ?? '').trim() || 'open',
    seller: sellerIn(typed),
    copperPricePerKg: Number.isNaN(price) ? null : price,
    metal: metalIn(typed.metal ?? ''),
  };
}
