import { Hono } from 'hono';
import { v7 } from 'uuid';
import { z } from 'zod';
import type { Store } from '../../store/store.ts';
import type { BenchEnv } from '../bench.ts';
import { atMost } from '../bodySize.ts';
import { notTooOften, PAIRING_RATE } from '../rates.ts';
import { refuse } from '../refusal.ts';
import { smallJson } from '../smallJson.ts';
import type { CodeTry } from './pairingCode.ts';
import type { Sharing } from './sharing.ts';
import { newToken, tokenHash } from './token.ts';

const LARGEST_BODY = 4096;
const LONGEST_NAME = 60;

const Asked = z.object({
  code: z.string().min(1).max(40),
  name: z
    .string()
    .trim()
    .min(1)
    .max(LONGEST_NAME)
    .regex(/^\P{C}+$/u),
});

/** Where a device becomes known: it sends the code that the bench computer shows, and gets a token. The only door without one. */
export function pairApi(store: Store, sharing: Sharing | null, now: () => number): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();
  const seldom = notTooOften(PAIRING_RATE, now, false);
  app.post('/', seldom, atMost(LARGEST_BODY, 'A code and a name are enough.'), async (c) => {
    const asked = await smallJson(
      c,
      Asked,
      `{"code": "…", "name": "…"} with a name of at most ${LONGEST_NAME} letters`,
    );
    if (asked instanceof Response) return asked;
    const tried: CodeTry = sharing?.tried(asked.code) ?? { outcome: 'none', left: null };
    if (tried.outcome !== 'right') return refuse(c, 403, CODE_REFUSALS[tried.outcome]);
    const token = newToken();
    const device = { id: v7(), name: asked.name, role: tried.role };
    await store.addDevice({ ...device, tokenHash: tokenHash(token), at: new Date(now()).toISOString() });
    c.header('cache-control', 'no-store');
    return c.json({ token, role: tried.role, device });
  });
  return app;
}

const CODE_REFUSALS = {
  none: {
    found: 'a code, and none is open',
    expected: 'a code that the bench computer shows now: each works once and for ten minutes',
    advice: 'Have a new one shown on the bench computer.',
  },
  wrong: {
    found: 'another code than the one that is shown',
    expected: 'the six letters and digits on the bench computer',
    advice: 'Read them again; capital and small letters are the same.',
  },
  renewed: {
    found: 'a wrong code for the fifth time',
    expected: 'the six letters and digits on the bench computer',
    advice: 'A new code has taken its place there.',
  },
} as const;
