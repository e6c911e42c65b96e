import type { z } from 'zod';
import type { BenchContext } from './bench.ts';
import { refuse } from './refusal.ts';

/** Reads a small JSON body of a known shape, or refuses it. An empty body counts as {}. */
export async function smallJson<T extends z.ZodType>(
  c: BenchContext,
  shape: T,
  expected: string,
): Promise<z.infer<T> | Response> {
  const text = await c.req.text();
  const outcome = shape.safeParse(parsed(text.trim() === '' ? '{}' : text));
  if (outcome.success) return outcome.data;
  const where = outcome.error.issues[0]?.path.join('.');
  return refuse(c, 400, {
    found: where ? `a body without a usable "${where}"` : 'a body of another shape',
    expected,
    advice: 'Nothing was changed.',
  });
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
