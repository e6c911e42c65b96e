/** Words that several shapes of the findings share. */
import { z } from 'zod';

/** What a cable is in its trial. */
export const Role = z.enum(['compared', 'control', 'reference']);

/** What became of a claim. */
export const Outcome = z.enum(['meets', 'falls short', 'not settled']);

export type Outcome = z.infer<typeof Outcome>;
