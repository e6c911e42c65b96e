/**
 * How long somebody must have stayed before random draws begin, ms: nobody waits for them, and the battery of whoever only passes
 * through is spared.
 */
export const REST_BEFORE_DRAWS_MS = 1500;
