/**
 * The findings as everybody outside the program sees them: the shape of `cupel assay --json`, of the page's data and of
 * what is published. The JSON schema in docs/ is generated from this file.
 *
 * A measured quantity is `{ value, unit, u, interval, level, from }`; what cannot be computed is `null`, with a warning
 * that says which reading is missing.
 */
import { z } from 'zod';
import { Current } from './shapes/current.ts';
import { Decide } from './shapes/decide.ts';
import { Flex } from './shapes/flex.ts';
import { Jacket } from './shapes/jacket.ts';
import { Interval, Measured } from './shapes/measured.ts';
import { Outcome, Role } from './shapes/words.ts';

export { Measured, Outcome };

export const Claim = z.object({
  /** 'copper held' | 'AWG by area' | 'AWG by resistance' | 'SAE size' | 'IEC 60228' | 'ISO 19642' | 'kcmil by area' | 'metal' | 'oxygen-free' … */
  reading: z.string(),
  /** True when this is what the label itself says; false when the label is vague or belongs to another system (shown folded). */
  of_label: z.boolean(),
  /** What it asks for in plain words, with its unit: '≥ 32.96 mm²'. */
  asks: z.string(),
  required: z.number().nullable(),
  unit: z.string().nullable(),
  /** The label's nominal value in the same unit (33.63 for 2 AWG); null where there is none. */
  nominal: z.number().nullable(),
  /** Allowance already inside `required`, relative to nominal; −0.02 for AWG areas. */
  tolerance: z.number().nullable(),
  found: Measured.nullable(),
  /** null: not testable with these tools. */
  outcome: Outcome.nullable(),
  probability_met: z.number().nullable(),
  /** How far below the requirement, as a share of it; positive is short. */
  shortfall: z.object({ value: z.number(), interval: Interval }).nullable(),
  source: z.string(),
  note: z.string(),
});

export const ResidualRow = z.object({
  quantity: z.string(),
  specimen: z.string().nullable(),
  /** How many readings its mean stands on, and which. */
  n: z.number(),
  readings: z.array(z.string()),
  mean: z.number(),
  unit: z.string(),
  /** Plain words: 'Conductor mass over 150 mm'. */
  text: z.string(),
  /** Distance from what the other readings and the metal's constants foretell, in standard uncertainties of that distance. */
  residual: z.number().nullable(),
});

export const ToolError = z.object({
  /** Which claim would change. */
  claim: z.string(),
  input: z.string(),
  /** How far off the tool would have to be for the claim to leave its outcome, and its limit of error, both in `unit`. */
  needed: z.number(),
  limit: z.number(),
  unit: z.string(),
  text: z.string(),
});

export const CableFindings = z.object({
  cable: z.string(),
  name: z.string(),
  role: Role,
  jacket_colour: z.string(),
  label: z.object({
    size: z.string(),
    metal: z.string(),
    /** How the size text was understood, in words; says so when it is vague. */
    read_as: z.string(),
    vague: z.boolean(),
    /** mm² that the drawing's dashed ring shows; null when the label gives no area. */
    claimed_area_mm2: z.number().nullable(),
  }),
  /** The finding in one plain sentence. */
  sentence: z.string(),
  conductor_area: Measured.nullable(),
  effective_awg: Measured.nullable(),
  /** 'about 2.3 AWG', 'between 1/0 and 2/0, 40 % of the way': never a negative gauge. */
  effective_gauge_text: z.string().nullable(),
  /** The nearest AWG size whose area it does meet, in words; null for metal that is not copper, where area is no size to go by. */
  nearest_size_met: z.string().nullable(),
  /** For metal that is not copper: 'conducts like about 4 AWG copper'; null for copper and where no resistance was read. */
  conducts_like: z.string().nullable(),
  mass_resistivity: Measured.nullable(),
  /** Metal → probability; sums to 1. Empty when nothing was measured. */
  metal: z.record(z.string(), z.number()),
  /** The metal found, or null when the readings do not settle it (with what would in `next_reading`). */
  metal_found: z.string().nullable(),
  /** Copper's share of the metal's volume for clad metal; 1 for copper. */
  copper_share: Measured.nullable(),
  lay_factor: Measured.nullable(),
  density: Measured.nullable(),
  resistance_20C: Measured.nullable(),
  mass_per_metre: Measured.nullable(),
  strand_count: Measured.nullable(),
  strand_diameter: Measured.nullable(),
  strands_sentence: z.string().nullable(),
  outer_diameter: Measured.nullable(),
  bundle_diameter: Measured.nullable(),
  wall: z.object({ mean: Measured, least: Measured.nullable(), concentricity: Measured.nullable() }).nullable(),
  /** Metal as a share of the whole cut face. */
  metal_of_section: Measured.nullable(),
  /** Metal area found over the area that the label claims. */
  metal_of_claim: Measured.nullable(),
  /** The headline: copper found over the copper that the label claims. */
  copper_of_claim: Measured.nullable(),
  consistency: z
    .object({
      chi2: z.number(),
      dof: z.number(),
      p: z.number(),
      /** Quantity to take again, null when the readings agree. */
      recheck: z.string().nullable(),
      sentence: z.string(),
    })
    .nullable(),
  claims: z.array(Claim),
  residuals: z.array(ResidualRow),
  /** What the ± of the area is made of; shares sum to 1. */
  spread_from: z.array(z.object({ input: z.string(), label: z.string(), share: z.number() })),
  tool_errors: z.array(ToolError),
  /** The single further reading that would help most. */
  next_reading: z
    .object({
      reading: z.string(),
      half_width_now: z.number().nullable(),
      half_width_then: z.number().nullable(),
      unit: z.string(),
      text: z.string(),
    })
    .nullable(),
  /** Readings that are missing, in words. */
  missing: z.array(z.string()),
  masses: z.array(
    z.object({
      specimen: z.string(),
      whole_g: z.number(),
      parts_g: z.number(),
      gap_g: z.number(),
      limit_g: z.number(),
      closes: z.boolean(),
      text: z.string(),
    }),
  ),
  fit: z.array(
    z.object({
      fitting: z.string(),
      kind: z.string(),
      bore_mm: z.number(),
      enters: z.boolean().nullable(),
      fills: z.boolean().nullable(),
      tried: z.string().nullable(),
      text: z.string(),
    }),
  ),
  /** Limits of error that were assumed, in words. */
  assumed: z.array(z.string()),
  monte_carlo: z
    .object({
      draws: z.number(),
      stable: z.boolean(),
      conductor_area: Measured.nullable(),
      copper_held_probability: z.number().nullable(),
      /** Largest difference from the closed form, in standard uncertainties, and whether it is within the JCGM 101 tolerance. */
      difference_in_u: z.number(),
      agrees: z.boolean(),
    })
    .nullable(),
});

export const Comparison = z.object({
  a: z.string(),
  b: z.string(),
  /** Area of a less area of b. */
  difference: Measured,
  probability_a_larger: z.number(),
  /** u the difference would have if the two cables shared no instrument. */
  u_if_independent: z.number(),
});

export const Control = z.object({
  cable: z.string(),
  mass_resistivity: Measured,
  expected: z.number(),
  /** Distance from copper's figure in standard uncertainties. */
  distance: z.number(),
  agrees: z.boolean(),
  sentence: z.string(),
});

export const Warning = z.object({ code: z.string(), cable: z.string().nullable(), text: z.string() });

export const Findings = z.object({
  trial: z.string(),
  title: z.string(),
  engine: z.object({
    version: z.string(),
    method: z.string(),
    level: z.number(),
    draws: z.number(),
    /** What the draws say of the closed form, in words; null when nothing was drawn. */
    draws_sentence: z.string().nullable(),
    seed: z.string(),
    /** SHA-256 of the trial's content in canonical form: same content, same digits. */
    content: z.string(),
    meets_above: z.number(),
    short_below: z.number(),
  }),
  /** The whole trial in one or two sentences. */
  sentence: z.string(),
  control: z.array(Control),
  cables: z.array(CableFindings),
  comparisons: z.array(Comparison),
  /** What bending readings and judged pairs say; null when there are none. */
  flex: Flex.nullable(),
  /** What the jackets are, and what they last; null when nothing about them was read or tested. */
  jacket: Jacket.nullable(),
  /** Four-wire resistance, heating and carrying current; null when no resistance and no log was recorded. */
  current: Current.nullable(),
  /** Who stands where by the weights of the plan; null where it states none. */
  decide: Decide.nullable(),
  warnings: z.array(Warning),
});

export type Claim = z.infer<typeof Claim>;
export type ResidualRow = z.infer<typeof ResidualRow>;
export type ToolError = z.infer<typeof ToolError>;
export type CableFindings = z.infer<typeof CableFindings>;
export type Comparison = z.infer<typeof Comparison>;
export type Control = z.infer<typeof Control>;
export type Warning = z.infer<typeof Warning>;
export type Findings = z.infer<typeof Findings>;
