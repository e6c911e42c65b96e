import type { Server } from 'node:http';
import { createServer as createTlsServer } from 'node:https';
import { createAdaptorServer } from '@hono/node-server';
import type { Tls } from './share/tls.ts';

/** Only this computer can reach it. */
const LOOPBACK = '127.0.0.1';
/** How many ports after the wanted one are tried. */
const PORTS_TRIED = 50;
/** How long an answer under way may take to finish after a stop, ms. */
const STOP_PATIENCE_MS = 1000;

/** What answers requests: a Hono application, whatever it carries along. */
export interface Answering {
  fetch: (request: Request, ...rest: never[]) => Response | Promise<Response>;
}

export interface Listening {
  port: number;
  /** `http://127.0.0.1:<port>`, or https and another address */
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
export async function listen(app: Answering, wanted: number, exactly = false): Promise<Listening> {
  const tries = exactly || wanted === 0 ? 1 : PORTS_TRIED;
  for (let port = wanted; port < wanted + tries && port <= 65_535; port += 1) {
    const listening = await listenOnce(app, LOOPBACK, port);
    if (listening !== null) return listening;
  }
  throw new PortTaken(wanted);
}

/** Listens at one address of this computer on exactly this port, over TLS when there is a certificate. */
export async function listenAt(app: Answering, address: string, port: number, tls?: Tls): Promise<Listening> {
  const listening = await listenOnce(app, address, port, tls);
  if (listening === null) throw new PortTaken(port);
  return listening;
}

async function listenOnce(app: Answering, address: string, port: number, tls?: Tls): Promise<Listening | null> {
  const fetch = app.fetch as (request: Request) => Response | Promise<Response>;
  const secure = tls === undefined ? {} : { createServer: createTlsServer, serverOptions: tls };
  const server = createAdaptorServer({ fetch, hostname: address, ...secure }) as Server;
  if (!(await listensAt(server, address, port))) return null;
  const place = server.address();
  const given = typeof place === 'object' && place !== null ? place.port : 0;
  return {
    port: given,
    address: `${tls === undefined ? 'http' : 'https'}://${address}:${given}`,
    stop: () => stopped(server),
  };
}

function listensAt(server: Server, address: string, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      // EACCES: ports that the system keeps to itself (below 1024, or reserved on Windows) are as good as taken.
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') resolve(false);
      else reject(error);
    });
    server.listen(port, address, () => resolve(true));
  });
}

function stopped(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeIdleConnections();
    setTimeout(() => server.closeAllConnections(), STOP_PATIENCE_MS).unref();
  });
}
