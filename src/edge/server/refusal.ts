import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';

/** What a request that cannot be served is told: what was found, what was expected, what to do about it. */
export interface Refusal {
  found: string;
  expected: string;
  advice: string;
}

export function refuse(c: Context, status: ContentfulStatusCode, refusal: Refusal): Response {
  return c.json({ error: refusal }, status);
}
