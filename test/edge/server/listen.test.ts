import { networkInterfaces } from 'node:os';
import { describe, expect, it } from 'vitest';
import { listen, PortTaken } from '../../../src/edge/server/listen.ts';
import { tempFolder } from '../../support/tempFolder.ts';
import { benchOn, smallPage } from './bench.ts';

const app = benchOn(smallPage(tempFolder()));

describe('listening', () => {
  it('takes the next free port, or says that the one asked for is taken', async () => {
    const first = await listen(app, 0);
    const second = await listen(app, first.port);
    expect(second.port).toBeGreaterThan(first.port);
    expect(second.address).toBe(`http://127.0.0.1:${second.port}`);
    await expect(listen(app, first.port, true)).rejects.toThrow(PortTaken);
    await first.stop();
    await second.stop();
  });

  it('hears nobody from another computer', async () => {
    const bench = await listen(app, 0);
    const outward = Object.values(networkInterfaces())
      .flat()
      .find((one) => one?.family === 'IPv4' && !one.internal);
    expect((await fetch(`${bench.address}/`)).status).toBe(403); // heard; the port in this app is another one
    if (outward !== undefined) await expect(fetch(`http://${outward.address}:${bench.port}/`)).rejects.toThrow();
    await bench.stop();
    await expect(fetch(bench.address)).rejects.toThrow();
  });
});
