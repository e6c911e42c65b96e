/** The part of the findings on the jacket: what it is, and what it lasts. */
import { z } from 'zod';
import { Interval, Measured } from './measured.ts';
import { Role } from './words.ts';

/** Two ends of an interval; an end that the pieces do not set is null. */
const OpenInterval = z.tuple([z.number().nullable(), z.number().nullable()]);

export const CrossCheck = z.object({
  /** Half the difference of the diameters over and under the jacket. */
  by_diameters: Measured,
  /** That less the wall as read, and within what the two agree, mm. */
  difference_mm: z.number(),
  limit_mm: z.number(),
  agrees: z.boolean(),
  /** 'outer diameter' | 'wall': what a squeeze between the jaws would explain; null where the two agree. */
  squeezed: z.string().nullable(),
  text: z.string(),
});

export const JacketCable = z.object({
  cable: z.string(),
  name: z.string(),
  role: Role,
  wall: z.object({ mean: Measured, least: Measured.nullable() }).nullable(),
  /** Why the wall is held back, in a sentence; empty where nothing speaks against it. */
  wall_doubt: z.string(),
  /** Readings round the face; 0 where the wall comes from diameters alone. */
  wall_readings: z.number(),
  /** Mean to two decimals, and least reading, mm, as IEC 60811-201 states them; null without readings. */
  stated: z.object({ mean_mm: z.number(), least_mm: z.number() }).nullable(),
  /** Least over greatest wall. */
  concentricity: Measured.nullable(),
  /** (greatest − least)/greatest wall: the other number that goes by that name. */
  eccentricity: z.number().nullable(),
  /** How far the bundle sits off the middle, mm, and where round the face the wall is thinnest, degrees. */
  off_centre: z.object({ distance_mm: z.number(), thinnest_at_degrees: z.number() }).nullable(),
  /** (greatest − least)/mean outer diameter over the directions read; null for fewer than two. */
  out_of_round: z.number().nullable(),
  /** Every reading round the face, for the drawing. */
  round: z.array(
    z.object({
      reading: z.string(),
      specimen: z.string(),
      position: z.string(),
      angle_degrees: z.number().nullable(),
      thickness_mm: z.number(),
    }),
  ),
  cross_check: CrossCheck.nullable(),
  /** Shares of the cut face; they sum to 1. */
  shares: z.object({ metal: Measured, air: Measured, jacket: Measured }).nullable(),
  /** Why the shares are held back although area, diameter and wall are known; empty otherwise. */
  shares_doubt: z.string(),
  mass_per_metre: Measured.nullable(),
  density: Measured.nullable(),
  /** 'weighed in water' | 'mass and diameters'; null without a density. */
  density_by: z.string().nullable(),
  /** Materials whose usual density it has: hints, nothing more. */
  hints: z.array(z.object({ material: z.string(), low: z.number(), high: z.number() })),
  hint_text: z.string(),
  /** Least walls that standards for road vehicles set for a cable of the claimed size, beside the least reading. */
  context: z.array(z.object({ standard: z.string(), least_mm: z.number(), text: z.string(), source: z.string() })),
  sentence: z.string(),
});

export const LastingMedian = z.object({
  /** null: not reached. */
  value: z.number().nullable(),
  interval: OpenInterval,
});

export const EndurancePiece = z.object({
  specimen: z.string(),
  /** How far it went, in the unit of the test. */
  amount: z.number(),
  /** 'failed' | 'survived' */
  outcome: z.string(),
  /** Where it was last seen whole, when it was not watched all the time; else null. */
  whole_at: z.number().nullable(),
});

export const EnduranceCable = z.object({
  cable: z.string(),
  name: z.string(),
  role: Role,
  n: z.number(),
  failed: z.number(),
  survived: z.number(),
  pieces: z.array(EndurancePiece),
  /** Amount that half of such pieces last; null for a test that is passed or not. */
  median: LastingMedian.extend({ level: z.number(), how: z.enum(['own shape', 'common shape', 'curve']) }).nullable(),
  /** The median with an upper and a lower end as a figure, on the scale of ratios; null where an end is open. */
  lasts: Measured.nullable(),
  curve_median: LastingMedian.nullable(),
  curve: z.array(
    z.object({
      amount: z.number(),
      at_risk: z.number(),
      failed: z.number(),
      survival: z.number(),
      interval: Interval.nullable(),
    }),
  ),
  weibull: z.object({ shape: z.number(), scale: z.number(), median: LastingMedian }).nullable(),
  with_common_shape: LastingMedian.nullable(),
  /** Share that came through, exact interval. */
  passed: z.object({ share: z.number(), interval: Interval }).nullable(),
  /** Place in bands, 1 lasts longest; null where not compared. */
  band: z.number().nullable(),
  cannot_be_told_from: z.array(z.string()),
  text: z.string(),
});

export const EndurancePair = z.object({
  a: z.string(),
  b: z.string(),
  /** How many times as long a lasts as b. */
  ratio: z.number().nullable(),
  interval: OpenInterval,
  p: z.number().nullable(),
  p_holm: z.number().nullable(),
  /** By counting every way to deal the pieces; and the least p that these pieces could have given. */
  p_exact: z.number().nullable(),
  p_exact_holm: z.number().nullable(),
  p_smallest: z.number().nullable(),
  parted: z.boolean(),
  /** Pieces of each cable that would part them if the difference is as found; null where parted or not to be said. */
  pieces_to_part: z.number().nullable(),
  /** Why that cannot be said of a pair that is not parted; empty otherwise. */
  why_no_pieces: z.string(),
  text: z.string(),
});

export const PerWall = z.object({
  /** 'strokes per mm of wall' */
  unit: z.string(),
  cables: z.array(
    z.object({ cable: z.string(), name: z.string(), median: LastingMedian, band: z.number().nullable() }),
  ),
  pairs: z.array(
    z.object({
      a: z.string(),
      b: z.string(),
      ratio: z.number().nullable(),
      interval: OpenInterval,
      p_holm: z.number().nullable(),
      parted: z.boolean(),
    }),
  ),
  sentence: z.string(),
});

export const EnduranceTest = z.object({
  test: z.string(),
  /** Name of the described test that it belongs to; null for one of the tester's own. */
  protocol: z.string().nullable(),
  /** 'amount': how much until it failed; 'passed': came through one exposure or not. */
  kind: z.enum(['amount', 'passed']),
  unit: z.string(),
  /** The one exposure of a test that is passed or not; null otherwise. */
  exposure: z.number().nullable(),
  stress: z.number().nullable(),
  stress_unit: z.string(),
  temperature_C: z.number().nullable(),
  cables: z.array(EnduranceCable),
  logrank: z
    .object({
      chi2: z.number(),
      dof: z.number(),
      p: z.number(),
      p_exact: z.number(),
      p_smallest: z.number(),
      /** Every way to deal the pieces was counted; false: a seeded sample. */
      all_counted: z.boolean(),
    })
    .nullable(),
  common_shape: z.number().nullable(),
  /** Whether one shape fits all cables. */
  equal_shapes: z.object({ w: z.number(), dof: z.number(), p: z.number() }).nullable(),
  pairs: z.array(EndurancePair),
  per_wall: PerWall.nullable(),
  /** The order in words, made from the bands. */
  sentence: z.string(),
  /** What has to be read beside the result: pieces used in other tests before, how hours are known. */
  notes: z.array(z.string()),
  /** That the samples are small, and how many pieces would part what is not parted. */
  small_samples: z.string(),
  how_we_know: z.array(z.string()),
});

export const ExposureChange = z.object({
  cable: z.string(),
  name: z.string(),
  /** The set of the readings: what it was exposed to. */
  exposure: z.string(),
  /** Relative changes; null where not measured before and after. */
  mass: Measured.nullable(),
  diameter: Measured.nullable(),
  pieces: z.number(),
  text: z.string(),
});

export const Jacket = z.object({
  cables: z.array(JacketCable),
  endurance: z.array(EnduranceTest),
  exposures: z.array(ExposureChange),
  sentence: z.string(),
});

export type JacketCable = z.infer<typeof JacketCable>;
export type EnduranceCable = z.infer<typeof EnduranceCable>;
export type EndurancePair = z.infer<typeof EndurancePair>;
export type EnduranceTest = z.infer<typeof EnduranceTest>;
export type ExposureChange = z.infer<typeof ExposureChange>;
export type LastingMedian = z.infer<typeof LastingMedian>;
export type PerWall = z.infer<typeof PerWall>;
export type Jacket = z.infer<typeof Jacket>;
