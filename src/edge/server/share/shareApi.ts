import { Hono } from 'hono';
import { z } from 'zod';
import { DEVICE_ROLES } from '../../store/devices.ts';
import { onlyAtTheBench } from '../asker.ts';
import type { BenchContext, BenchEnv } from '../bench.ts';
import { atMost } from '../bodySize.ts';
import { PortTaken } from '../listen.ts';
import { refuse } from '../refusal.ts';
import { smallJson } from '../smallJson.ts';
import { qrModules } from './qr.ts';
import { type OpenCode, type Sharing, SharingRefusal } from './sharing.ts';

const LARGEST_BODY = 1024;
const Asked = z.object({ role: z.enum(DEVICE_ROLES).default('recorder') });

/** Opening the bench to the local network and to one device at a time; only for somebody at the bench computer itself. */
export function shareApi(sharing: Sharing | null): Hono<BenchEnv> {
  const app = new Hono<BenchEnv>();
  app.use(onlyAtTheBench(), atMost(LARGEST_BODY, 'A role is enough.'));

  app.get('/', (c) => {
    const names = sharing?.names();
    const code = sharing?.code() ?? null;
    return c.json({
      sharing: (names?.addresses.length ?? 0) > 0,
      secure: names?.secure ?? false,
      addresses: names?.addresses ?? [],
      code: code === null ? null : shown(code),
    });
  });

  app.post('/open', async (c) => {
    if (sharing === null) return noSharing(c);
    const asked = await smallJson(c, Asked, `{"role": "…"} with one of ${DEVICE_ROLES.join(', ')}`);
    if (asked instanceof Response) return asked;
    try {
      return c.json(shown(await sharing.open(asked.role)));
    } catch (error) {
      if (!(error instanceof SharingRefusal || error instanceof PortTaken)) throw error;
      return refuse(c, 409, {
        found: error.message,
        expected: 'a local network that this computer can be reached on',
        advice: 'Nothing was opened.',
      });
    }
  });

  app.post('/close', (c) => {
    sharing?.close();
    return c.json({ code: null });
  });

  app.post('/end', async (c) => {
    await sharing?.end();
    return c.json({ sharing: false });
  });

  return app;
}

function shown(code: OpenCode) {
  const url = code.urls[0] ?? '';
  return { ...code, url, qr: qrModules(url) };
}

function noSharing(c: BenchContext): Response {
  return refuse(c, 409, {
    found: 'a bench that cannot be shared',
    expected: 'one that was started with cupel bench',
    advice: 'Nothing was opened.',
  });
}
