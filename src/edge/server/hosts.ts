import type { BenchMiddleware } from './bench.ts';
import { refuse } from './refusal.ts';

const LOOPBACK_NAMES = ['127.0.0.1', 'localhost', '[::1]'];

/** Under which names the bench may be asked. */
export interface OwnNames {
  port: number;
  /** Addresses of this computer on the local network that are listened on; empty unless somebody shares. */
  addresses: readonly string[];
  /** Whether those are served over TLS. */
  secure: boolean;
  /** Further names that were given at the start, for a name service or a proxy in front: with this port or without any. */
  given: readonly string[];
}

/** The hosts that a request may name, in lower case. */
export function ownHosts({ port, addresses, given }: OwnNames): string[] {
  const withPort = [...LOOPBACK_NAMES, ...addresses, ...given].map((name) => `${name}:${port}`);
  return [...withPort, ...given].map((host) => host.toLowerCase());
}

/** The origins of the bench's own page. */
export function ownOrigins({ port, addresses, secure, given }: OwnNames): string[] {
  const scheme = secure ? 'https' : 'http';
  const named = given.flatMap((name) => [name, `${name}:${port}`]).map((host) => host.toLowerCase());
  return [
    ...LOOPBACK_NAMES.map((name) => `http://${name}:${port}`),
    ...addresses.map((address) => `${scheme}://${address}:${port}`),
    // A proxy in front may add TLS of which the bench knows nothing.
    ...named.flatMap((host) => [`http://${host}`, `https://${host}`]),
  ];
}

/** True for a host that only this computer itself is reached under. */
export function isLoopbackHost(host: string): boolean {
  return LOOPBACK_NAMES.includes(host.toLowerCase().replace(/:\d+$/, ''));
}

/**
 * Answers only requests that name this computer as their host. A foreign page whose own name was pointed at this computer
 * (DNS rebinding) still sends its own name, and is turned away.
 */
export function onlyOwnHost(names: () => OwnNames): BenchMiddleware {
  return async (c, next) => {
    const host = c.req.header('host') ?? '';
    const { port } = names();
    if (ownHosts(names()).includes(host.toLowerCase())) return next();
    return refuse(c, 403, {
      found: `a request for the host "${host.slice(0, 100)}"`,
      expected: `127.0.0.1:${port}, or another address that Cupel printed when it started`,
      advice: 'Open one of those; a name of your own is given with --host when Cupel starts.',
    });
  };
}

/** Takes changes only from the bench's own page, or from a program that is no browser and sends no origin. */
export function onlyOwnOrigin(names: () => OwnNames): BenchMiddleware {
  return async (c, next) => {
    const origin = c.req.header('origin');
    const site = c.req.header('sec-fetch-site') ?? 'none';
    const own = origin === undefined ? ['none', 'same-origin'].includes(site) : ownOrigins(names()).includes(origin);
    if (c.req.method === 'GET' || c.req.method === 'HEAD' || own) return next();
    return refuse(c, 403, {
      found: `a change sent by the page ${(origin ?? 'of another site').slice(0, 100)}`,
      expected: "changes from the bench's own page only",
      advice: 'Nothing was kept.',
    });
  };
}
