/** A cable of the shelf in one line: what is remembered of it from one trial. The shape of `cupel shelf --json`. */
import { z } from 'zod';
import { Interval, Measured } from './measured.ts';
import { Outcome, Role } from './words.ts';

export const ShelfCable = z.object({
  trial: z.string(),
  title: z.string(),
  /** 'blind': names are codes, and lot, seller and price are held back. */
  state: z.enum(['open', 'sealed in part', 'blind']),
  /** Day of its last reading that counts, else that on which the trial was opened: 2026-11-25; null when neither is known. */
  day: z.string().nullable(),
  cable: z.string(),
  /** Maker and model, or the code while the trial is blind. */
  name: z.string(),
  role: Role,
  lot: z.string(),
  /** Name under which this very piece is measured in other trials too; empty when it is not. */
  shared_name: z.string(),
  /** Given rather than bought; null when nothing is said of it. */
  supplied: z.boolean().nullable(),
  label: z.object({ size: z.string(), metal: z.string(), area_mm2: z.number().nullable() }),
  /** Of the claim that is said first of the cable; null when none is judged. */
  outcome: Outcome.nullable(),
  metal_found: z.string().nullable(),
  conductor_area: Measured.nullable(),
  copper_of_claim: Measured.nullable(),
  resistance_20C: Measured.nullable(),
  outer_diameter: Measured.nullable(),
  bending_stiffness: Measured.nullable(),
  wall: Measured.nullable(),
  price_per_m: z.number().nullable(),
  /** As typed; empty when nothing tells it. */
  currency: z.string(),
  /** What one metre at one milliohm costs: price per metre × mΩ per metre. */
  price_at_one_mohm: Measured.nullable(),
  /** Coldest and warmest temperature noted with its readings, °C; null when none was. */
  temperature_C: Interval.nullable(),
  /** Temperature of its bending, °C; null without one. */
  bent_at_C: z.number().nullable(),
});

export type ShelfCable = z.infer<typeof ShelfCable>;
