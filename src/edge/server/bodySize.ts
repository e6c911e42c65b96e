import { bodyLimit } from 'hono/body-limit';
import type { BenchMiddleware } from './bench.ts';
import { refuse } from './refusal.ts';

/** Refuses a body of more than `bytes`, before it was read whole. */
export function atMost(bytes: number, advice: string): BenchMiddleware {
  return bodyLimit({
    maxSize: bytes,
    onError: (c) =>
      refuse(c, 413, { found: 'a body that is too large', expected: `at most ${sizeWords(bytes)} at a time`, advice }),
  });
}

function sizeWords(bytes: number): string {
  return bytes < 1024 * 1024 ? `${Math.floor(bytes / 1024)} kB` : `${Math.floor(bytes / 1024 / 1024)} MB`;
}
