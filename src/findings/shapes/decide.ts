/** The part of the findings on standing: who comes where by which weights, how sure that is, and value for money. */
import { z } from 'zod';
import { Measured } from './measured.ts';

export const CriterionFound = z.object({
  /** 'copper' | 'resistance' | 'price' | 'endurance:scrape' …: the name that plan.csv uses. */
  id: z.string(),
  name: z.string(),
  unit: z.string(),
  better: z.enum(['more', 'less']),
  /** 'linear' goes on beyond its ends; 'flat' does not; 'threshold' is all or nothing at `best`. */
  shape: z.enum(['linear', 'flat', 'threshold']),
  /** Figure worth nothing, and figure worth everything. */
  worst: z.number(),
  best: z.number(),
  /** True when plan.csv states the scale; false for one suggested from the claimed sizes or the field. */
  fixed: z.boolean(),
  /** Share of the whole; 0 when it does not count. */
  weight: z.number(),
});

export const WeightOf = z.object({ criterion: z.string(), weight: z.number() });

export const CableStanding = z.object({
  cable: z.string(),
  name: z.string(),
  /** Weighted mean worth at the stated weights and the standard deviation that the measurements leave it. */
  weighted_value: z.number(),
  u: z.number(),
  /** Chance of each place at the stated weights, the first place first: doubt about the measurements alone. */
  place_probability: z.array(z.number()),
  probability_first: z.number(),
  /** The same over tastes near the stated weights: measurement and taste together. */
  acceptability: z.array(z.number()),
  band: z.number(),
  cannot_be_told_from: z.array(z.string()),
  /** Mean of the weights at which it comes first; null when too few draws bring it first to say. */
  central_weights: z.array(WeightOf).nullable(),
  central_text: z.string(),
  /** Nearest weights at which it would come first; null when it does already, or no weights bring it there. */
  to_come_first: z.object({ weights: z.array(WeightOf), change: z.number() }).nullable(),
  to_come_first_text: z.string(),
  /** Mean worth by each criterion that counts. */
  worth: z.array(z.object({ criterion: z.string(), worth: z.number(), known: z.boolean() })),
  /** Criteria that count but were not measured on it: anything on their scales was allowed. */
  unknown: z.array(z.string()),
});

export const ValueForMoney = z.object({
  cable: z.string(),
  name: z.string(),
  /** As typed. */
  currency: z.string(),
  price_per_m: z.number().nullable(),
  /** Per mm² of real copper, for a metre of cable. */
  price_per_m_mm2: Measured.nullable(),
  /** What one metre at one milliohm costs: price per metre × mΩ per metre. */
  price_per_m_at_one_mohm: Measured.nullable(),
  text: z.string(),
});

export const EdgePicture = z.object({
  /** Two criteria that pull against each other. */
  a: z.string(),
  b: z.string(),
  cables: z.array(
    z.object({
      cable: z.string(),
      a: z.number(),
      b: z.number(),
      /** No other cable is as good in both and better in one. */
      on_edge: z.boolean(),
      /** Chance of that, by the draws. */
      probability: z.number(),
    }),
  ),
});

export const Decide = z.object({
  draws: z.number(),
  /** The job whose weights were taken, if any. */
  job: z.string().nullable(),
  /** 'numbers' | 'ranking' | 'job' | 'even' */
  weights_from: z.enum(['numbers', 'ranking', 'job', 'even']),
  criteria: z.array(CriterionFound),
  /** In the order of the mean worth. */
  cables: z.array(CableStanding),
  /** Cables that stand outside the order: references. */
  outside: z.array(z.object({ cable: z.string(), name: z.string(), weighted_value: z.number() })),
  /** Chance above which every cable of a band stands before every cable below the cut. */
  cut_above: z.number(),
  /** Criteria that rise and fall together. */
  alike: z.array(z.object({ a: z.string(), b: z.string(), correlation: z.number() })),
  value: z.array(ValueForMoney),
  edges: z.array(EdgePicture),
  /** The order in words, made from the bands. */
  sentence: z.string(),
  /** What tastes near the stated weights would change, in words. */
  taste_sentence: z.string(),
});

export type CriterionFound = z.infer<typeof CriterionFound>;
export type WeightOf = z.infer<typeof WeightOf>;
export type CableStanding = z.infer<typeof CableStanding>;
export type ValueForMoney = z.infer<typeof ValueForMoney>;
export type EdgePicture = z.infer<typeof EdgePicture>;
export type Decide = z.infer<typeof Decide>;
