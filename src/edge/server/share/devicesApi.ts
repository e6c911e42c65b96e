import { Hono } from 'hono';
import type { Store } from '../../store/store.ts';
import { mayOnly } from '../asker.ts';
import type { BenchEnv } from '../bench.ts';
import type { LiveHub } from '../live/liveHub.ts';
import { refuse } from '../refusal.ts';

/** The devices that were let in: the list, and turning one away. */
export function devicesApi(store: Store, live: LiveHub, now: () => number): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();

  app.get('/', mayOnly('keep'), async (c) => c.json(await store.devices()));

  app.delete('/:id', mayOnly('keep'), async (c) => {
    const id = c.req.param('id');
    const known = await store.revokeDevice(id, new Date(now()).toISOString());
    live.drop(id);
    if (known) return c.json({ revoked: id });
    return refuse(c, 404, {
      found: `the device ${id.slice(0, 100)}`,
      expected: 'one of those that were added',
      advice: '/api/devices lists them.',
    });
  });

  return app;
}
