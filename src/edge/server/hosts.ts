import type { MiddlewareHandler } from 'hono';
import { refuse } from './refusal.ts';

const LOOPBACK_NAMES = ['127.0.0.1', 'localhost', '[::1]'];

/** The names under which this computer, and nobody else, reaches the bench on a port. */
export function ownHosts(port: number): string[] {
  return LOOPBACK_NAMES.map((name) => `${name}:${port}`);
}

/**
 * Answers only requests that name this computer as their host. A foreign page whose own name was pointed at 127.0.0.1
 * (DNS rebinding) still sends its own name, and is turned away.
 */
export function onlyOwnHost(port: () => number): MiddlewareHandler {
  return async (c, next) => {
    const host = c.req.header('host') ?? '';
    if (ownHosts(port()).includes(host.toLowerCase())) return next();
    return refuse(c, 403, {
      found: `a request for the host "${host.slice(0, 100)}"`,
      expected: `127.0.0.1:${port()}, the address that Cupel printed when it started`,
      advice: 'Open that address on the computer that Cupel runs on.',
    });
  };
}

/** Takes changes only from the bench's own page, or from a program that is no browser and sends no origin. */
export function onlyOwnOrigin(port: () => number): MiddlewareHandler {
  return async (c, next) => {
    const origin = c.req.header('origin');
    const own = ownHosts(port()).map((host) => `http://${host}`);
    if (c.req.method === 'GET' || c.req.method === 'HEAD' || origin === undefined || own.includes(origin))
      return next();
    return refuse(c, 403, {
      found: `a change sent by the page ${origin.slice(0, 100)}`,
      expected: "changes from the bench's own page only",
      advice: 'Nothing was kept.',
    });
  };
}
