import { z } from 'zod';

export const Interval = z.tuple([z.number(), z.number()]);

export const Measured = z.object({
  value: z.number(),
  unit: z.string(),
  /** Standard uncertainty. */
  u: z.number(),
  interval: Interval,
  /** Probability that the interval claims, such as 0.95. */
  level: z.number(),
  /** Quantities that it rests on. */
  from: z.array(z.string()),
  /** Set when the figure holds only under a condition: 'if copper'. */
  condition: z.string().optional(),
});

export type Measured = z.infer<typeof Measured>;
