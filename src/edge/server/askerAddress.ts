import type { BenchContext } from './bench.ts';
import { isLoopbackHost } from './hosts.ts';

/** Headers by which a program in between says that it passes on somebody else's request. */
const PASSED_ON = ['forwarded', 'x-forwarded-for', 'x-forwarded-host', 'x-real-ip'];

/** The network address that a request came from; empty when it came through no socket. */
export function askerAddress(c: BenchContext): string {
  const address = c.env?.incoming?.socket?.remoteAddress ?? '';
  // Node.js writes an IPv4 address that reached an IPv6 socket as ::ffff:192.0.2.7 (RFC 4291 §2.5.5.2).
  return address.replace(/^::ffff:(?=\d+\.)/i, '');
}

/**
 * True when somebody at this very computer asks: over the loopback address, under a loopback name, and not passed on. A
 * reverse proxy on the same computer also comes over loopback, but for somebody else, whose name or header gives that away.
 */
export function fromThisComputer(c: BenchContext): boolean {
  const address = askerAddress(c);
  const loopback = address === '::1' || /^127\.\d+\.\d+\.\d+$/.test(address);
  const passedOn = PASSED_ON.some((name) => c.req.header(name) !== undefined);
  return loopback && !passedOn && isLoopbackHost(c.req.header('host') ?? '');
}
