/** The part of the findings on bending. */
import { z } from 'zod';
import { Interval, Measured } from './measured.ts';
import { Role } from './words.ts';

export const Droop = z.object({
  specimen: z.string(),
  set: z.string(),
  temperature_C: z.number().nullable(),
  /** Coldest and warmest temperature noted with it, °C; null when none was. */
  temperature_range_C: Interval.nullable(),
  overhang_mm: z.number(),
  /** w L³ / EI; null when the droop was refused. */
  lambda: z.number().nullable(),
  bending_stiffness: Measured.nullable(),
  /** 'one face' | 'mean of both faces' | 'both faces solved' */
  way: z.string().nullable(),
  /** How far the tip stands off the straight by itself, as a share of the overhang; null when only one face was read. */
  set_of_piece: z.number().nullable(),
  /** Gap between approaching from above and from below, mm; null when only one was read. */
  gap_mm: z.number().nullable(),
  /** Share of the stiffness that a clamp edge off by a quarter of the diameter costs: not in the ±, but in every comparison. */
  clamp_edge_share: z.number().nullable(),
  /** Overhang that would settle it best, mm. */
  better_overhang_mm: z.number().nullable(),
  text: z.string(),
});

export const Push = z.object({
  specimen: z.string(),
  /** Name of the run: the set without the number of the point. */
  run: z.string(),
  /** 'first push' | 'worked in' | '' */
  state: z.string(),
  temperature_C: z.number().nullable(),
  /** Coldest and warmest temperature noted with it, °C; null when none was. */
  temperature_range_C: Interval.nullable(),
  span_mm: z.number(),
  points: z.number(),
  points_used: z.number(),
  bending_stiffness: Measured.nullable(),
  /** Span in diameters of the cable, and the share that shear was taken to hide; null without a diameter. */
  span_in_diameters: z.number().nullable(),
  shear_share: z.number().nullable(),
  /** Work not given back, as a share of that put in; null without readings while unloading. */
  lost_share: z.number().nullable(),
  lost_mJ: z.number().nullable(),
  text: z.string(),
});

export const FlexCable = z.object({
  cable: z.string(),
  name: z.string(),
  role: Role,
  bending_stiffness: Measured.nullable(),
  /** 'droop' | 'push'; null when there is no stiffness. */
  method: z.string().nullable(),
  /** Of a stiffness by push: 'first push' | 'worked in' | '' where the run does not say; null else. */
  push_state: z.string().nullable(),
  temperature_C: z.number().nullable(),
  /** Coldest and warmest temperature noted with it, °C; null when none was. */
  temperature_range_C: Interval.nullable(),
  weight_per_metre: Measured.nullable(),
  /** (EI/w)^(1/3): half the overhang at which the tip hangs 41.5° below the clamp. */
  bending_length: Measured.nullable(),
  /** Place in bands of stiffness, 1 the easiest to bend; null where not compared. */
  band: z.number().nullable(),
  cannot_be_told_from: z.array(z.string()),
  coil_ratio: Measured.nullable(),
  spring_back: Measured.nullable(),
  /** Temperatures of the last two, °C; null where not noted. */
  coil_temperature_C: z.number().nullable(),
  spring_back_temperature_C: z.number().nullable(),
  bounds: z
    .object({
      slip: z.number(),
      stick: z.number(),
      unit: z.string(),
      /** 0 at slip, 1 at stick, by ratio; null without a stiffness. */
      place: z.number().nullable(),
      text: z.string(),
    })
    .nullable(),
  /** Stiffness cold over stiffness warm. */
  cold_stiffening: z.object({ ratio: Measured, cold_C: z.number(), warm_C: z.number(), text: z.string() }).nullable(),
  /** Stiffness by push over that by droop, at one temperature; null without both. */
  push_over_droop: z.object({ ratio: Measured, state: z.string(), text: z.string() }).nullable(),
  droops: z.array(Droop),
  pushes: z.array(Push),
  cautions: z.array(z.string()),
});

export const JudgedCable = z.object({
  cable: z.string(),
  name: z.string(),
  /** Ease of bending, logarithm of odds; higher bends more easily. */
  ability: z.number(),
  se: z.number(),
  /** null, and no places, where no judgement joins all cables: what was never compared has no order. */
  probability_best: z.number().nullable(),
  place_probability: z.array(z.number()),
  /** null there too. */
  band: z.number().nullable(),
  cannot_be_told_from: z.array(z.string()),
});

export const Judged = z.object({
  cables: z.array(JudgedCable),
  tie: z.number(),
  judges: z.array(
    z.object({
      by: z.string(),
      pairs: z.number(),
      circular_triads: z.number(),
      decided_triads: z.number(),
      consistency: z.number().nullable(),
    }),
  ),
  pairs: z.number(),
  /** How many more make an order to be spoken of: three for each pair of cables. */
  more_wanted: z.number(),
  /** How the judges were kept from knowing, as typed; 'open' where not stated. */
  blinded: z.array(z.string()),
  temperature_C: z.number().nullable(),
  /** Coldest and warmest temperature noted with it, °C; null when none was. */
  temperature_range_C: Interval.nullable(),
  /** Advantage of the left hand. */
  side: z.object({ value: z.number(), se: z.number() }),
  /** Fewest cables that hold the easiest with 95 %. */
  best_set: z.array(z.string()),
  /** Chance above which every cable of a band beats every cable below the cut. */
  cut_above: z.number(),
  judges_agree: z.object({ w: z.number(), chi2: z.number(), dof: z.number(), p: z.number() }).nullable(),
  judges_apart: z.object({ chi2: z.number(), dof: z.number(), p: z.number(), widened: z.number() }).nullable(),
  /** Groups of cables that no judgement joins; one group when all are joined. */
  groups: z.array(z.array(z.string())),
  /** Rank correlation of ease with measured stiffness turned round: 1 when both give one order. */
  with_stiffness: z.object({ rho: z.number(), interval: Interval, level: z.number(), cables: z.number() }).nullable(),
  sentence: z.string(),
});

export const Flex = z.object({
  cables: z.array(FlexCable),
  judged: Judged.nullable(),
  sentence: z.string(),
});

export type Droop = z.infer<typeof Droop>;
export type Push = z.infer<typeof Push>;
export type FlexCable = z.infer<typeof FlexCable>;
export type JudgedCable = z.infer<typeof JudgedCable>;
export type Judged = z.infer<typeof Judged>;
export type Flex = z.infer<typeof Flex>;
