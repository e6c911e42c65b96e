import type { Server } from 'node:http';
import { createAdaptorServer } from '@hono/node-server';
import type { Hono } from 'hono';

/** Only this computer can reach it. */
const LOOPBACK = '127.0.0.1';
/** How many ports after the wanted one are tried. */
const PORTS_TRIED = 50;
/** How long an answer under way may take to finish after a stop, ms. */
const STOP_PATIENCE_MS = 1000;

export interface Listening {
  port: number;
  /** `http://127.0.0.1:<port>` */
  address: string;
  stop(): Promise<void>;
}

/** No port could be had; `port` is the one that was wanted. */
export class PortTaken extends Error {
  readonly port: number;
  constructor(port: number) {
    super(`Port ${port} is taken by another program; name another one with --port, or leave it out.`);
    this.port = port;
  }
}

/**
 * Listens on the loopback address at `wanted`, or, unless `exactly`, at the next port that is free. Port 0 lets the
 * system choose.
 */
export async function listen(app: Hono, wanted: number, exactly = false): Promise<Listening> {
  const tries = exactly || wanted === 0 ? 1 : PORTS_TRIED;
  for (let port = wanted; port < wanted + tries && port <= 65_535; port += 1) {
    const server = createAdaptorServer({ fetch: app.fetch, hostname: LOOPBACK }) as Server;
    if (await listensAt(server, port)) return listening(server);
  }
  throw new PortTaken(wanted);
}

function listensAt(server: Server, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      // EACCES: ports that the system keeps to itself (below 1024, or reserved on Windows) are as good as taken.
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') resolve(false);
      else reject(error);
    });
    server.listen(port, LOOPBACK, () => resolve(true));
  });
}

function listening(server: Server): Listening {
  const place = server.address();
  const port = typeof place === 'object' && place !== null ? place.port : 0;
  return {
    port,
    address: `http://${LOOPBACK}:${port}`,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeIdleConnections();
        setTimeout(() => server.closeAllConnections(), STOP_PATIENCE_MS).unref();
      }),
  };
}
