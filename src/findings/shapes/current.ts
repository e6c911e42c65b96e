/** The part of the findings on resistance under current, heating and carrying current. */
import { z } from 'zod';
import { Interval, Measured } from './measured.ts';
import { Role } from './words.ts';

export const FourWireReading = z.object({
  specimen: z.string(),
  /** How many voltages with their currents. */
  points: z.number(),
  /** 'line' | 'line with heating' | 'two polarities' | 'one level'; null when they give no resistance. */
  way: z.string().nullable(),
  resistance: Measured.nullable(),
  at_length_mm: z.number().nullable(),
  temperature_C: z.number().nullable(),
  /** At the temperature of the reading. */
  per_metre: Measured.nullable(),
  /** Ω per 1000 ft at that temperature. */
  per_1000_ft: Measured.nullable(),
  at_20C: Measured.nullable(),
  /** Voltage without current, µV. */
  emf_uV: z.object({ value: z.number(), u: z.number().nullable() }).nullable(),
  /** Rise of the resistance from no current to the largest, as a share. */
  warmed: z.number().nullable(),
  /** 'plausible' | 'too high' | 'too low'; null when no area is known. */
  plausible: z.string().nullable(),
  text: z.string(),
});

export const HeatingTest = z.object({
  specimen: z.string(),
  current_A: z.number(),
  /** 'conductor' | 'surface': where the thermometer sat. */
  where: z.string(),
  minutes: z.number(),
  ambient_C: z.number(),
  steady_rise: Measured.nullable(),
  /** 'too short' | 'too wide' | 'no rise' | 'too few readings' | 'not from rest'; null when answered. */
  refused: z.string().nullable(),
  /** s, fastest first; empty when refused without a curve. */
  time_constants_s: z.array(z.number()),
  slowest_s: z.object({ value: z.number(), interval: Interval }).nullable(),
  /** Belief that two time constants are needed. */
  two_belief: z.number().nullable(),
  /** Length of the log in slowest time constants. */
  lengths: z.number().nullable(),
  /** What the last third still rises by in one of them, as a share of the steady rise. */
  still_rising: z.number().nullable(),
  /** Rise of the copper by its own resistance, beside the thermometer, K. */
  copper: z.object({ by_resistance: z.number(), by_thermometer: z.number(), apart: z.boolean() }).nullable(),
  text: z.string(),
});

export const CurrentCable = z.object({
  cable: z.string(),
  name: z.string(),
  role: Role,
  four_wire: z.array(FourWireReading),
  heating_tests: z.array(HeatingTest),
  /** The test that speaks for the cable: the answered one at the largest current; null when there is none. */
  heating: z
    .object({ specimen: z.string(), current_A: z.number(), steady_rise: Measured, time_constant_s: z.number() })
    .nullable(),
  /** Current at which the conductor reaches the jacket's rating in still air; null when something is missing for it. */
  carrying: z
    .object({
      ambient_C: z.number(),
      rating_C: z.number(),
      /** True when nobody stated a rating and the lowest usual one was taken. */
      rating_assumed: z.boolean(),
      /** What set the model's loss: its own heating test, those of other cables of the trial, or nothing. */
      calibrated_by: z.enum(['own test', 'tests of the trial', 'nothing']),
      /** Loss of the model times this gives the test's rise; 1 without a test. */
      loss_factor: z.number(),
      /** Standard uncertainty of its logarithm where the cable is run. */
      loss_u: z.number(),
      current_A: Measured,
      text: z.string(),
    })
    .nullable(),
  /** What is missing for a carrying current, in words. */
  missing: z.string().nullable(),
});

export const Current = z.object({
  cables: z.array(CurrentCable),
  sentence: z.string(),
  /** Goes with every carrying current. */
  estimate: z.string(),
  /** What to heed, for the tests that were recorded. */
  cautions: z.array(z.string()),
});

export type FourWireReading = z.infer<typeof FourWireReading>;
export type HeatingTest = z.infer<typeof HeatingTest>;
export type CurrentCable = z.infer<typeof CurrentCable>;
export type Current = z.infer<typeof Current>;
