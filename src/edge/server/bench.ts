import type { Context, MiddlewareHandler } from 'hono';
import type { Asker } from './asker.ts';

/** What a request brings along: the socket that it came through, and, past the door of the API, who asks. */
export interface BenchEnv {
  Bindings: { incoming?: { socket?: { remoteAddress?: string } } };
  Variables: { asker: Asker };
}

export type BenchContext = Context<BenchEnv>;
export type BenchMiddleware = MiddlewareHandler<BenchEnv>;
