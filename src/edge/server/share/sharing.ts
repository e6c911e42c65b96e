import { randomInt } from 'node:crypto';
import type { DeviceRole } from '../../store/devices.ts';
import type { OwnNames } from '../hosts.ts';
import type { Listening } from '../listen.ts';
import { type CodeTry, newCode, type PairingCode, type RandomBelow, tryCode } from './pairingCode.ts';

/** What an open code is shown with. */
export interface OpenCode {
  code: string;
  role: DeviceRole;
  /** Addresses that a phone opens, the likeliest first; the code is in the part that a browser keeps to itself. */
  urls: string[];
  /** ISO 8601 in UTC. */
  until: string;
}

/** No device could reach this computer; the message is a sentence for the person. */
export class SharingRefusal extends Error {
  override name = 'SharingRefusal';
}

/** Where the bench listens besides loopback. */
interface Listened {
  address: string;
  stop: Listening['stop'];
}

export interface SharingParts {
  /** The port that the bench is at. */
  port: () => number;
  /** Listens at an address of the local network. */
  listenAt: (address: string) => Promise<Listening>;
  /** Addresses of this computer on the local network, looked up anew each time. */
  addresses: () => string[];
  /** Names given at the start, see OwnNames. */
  given?: readonly string[];
  secure?: boolean;
  now?: () => number;
  randomBelow?: RandomBelow;
  /** Hears of a code that took the place of one that was tried wrongly too often. */
  onRenewed?: (code: OpenCode) => void;
}

/** The bench on the local network: where it listens, and the one code that lets a device in. */
export interface Sharing {
  names(): OwnNames;
  /** Listens on the local network unless it does so already, and makes a new code; an older one is void. */
  open(role: DeviceRole): Promise<OpenCode>;
  /** The code that is open, null when there is none or its time is over. */
  code(): OpenCode | null;
  /** Makes the code void. Devices that were let in stay. */
  close(): void;
  /** Stops listening on the local network, too. */
  end(): Promise<void>;
  /** Tries a code that a device sent; a right one is used up. */
  tried(typed: string): CodeTry;
}

/** Sharing with nothing listened on yet. */
export function sharing(parts: SharingParts): Sharing {
  const { now = Date.now, randomBelow = (under: number) => randomInt(under), given = [], secure = false } = parts;
  let listened: Listened[] = [];
  let open: PairingCode | null = null;

  const addresses = () => listened.map(({ address }) => address);
  const shown = ({ code, role, until }: PairingCode): OpenCode => ({
    code,
    role,
    urls: pairingAddresses([...addresses(), ...given], parts.port(), secure, code),
    until: new Date(until).toISOString(),
  });

  return {
    names: () => ({ port: parts.port(), addresses: addresses(), secure, given }),
    async open(role) {
      listened = await listenAtAll(parts, listened);
      open = newCode(role, now(), randomBelow);
      return shown(open);
    },
    code: () => (open === null || now() >= open.until ? null : shown(open)),
    close() {
      open = null;
    },
    async end() {
      open = null;
      const stopping = listened;
      listened = [];
      await Promise.all(stopping.map(({ stop }) => stop()));
    },
    tried(typed) {
      const outcome = tryCode(open, typed, now(), randomBelow);
      open = outcome.left;
      if (outcome.outcome === 'renewed') parts.onRenewed?.(shown(outcome.left));
      return outcome;
    },
  };
}

function pairingAddresses(hosts: readonly string[], port: number, secure: boolean, code: string): string[] {
  return hosts.map((host) => `${secure ? 'https' : 'http'}://${host}:${port}/pair#${code}`);
}

/** Listens also where this computer has got an address since; what is listened on already goes on. */
async function listenAtAll(
  { addresses, listenAt, given = [] }: SharingParts,
  listened: readonly Listened[],
): Promise<Listened[]> {
  const wanted = addresses();
  if (wanted.length + given.length === 0)
    throw new SharingRefusal(
      'This computer is on no local network; join the network that the phone is on and try again.',
    );
  const all = [...listened];
  for (const address of wanted) {
    if (all.some((one) => one.address === address)) continue;
    all.push({ address, stop: (await listenAt(address)).stop });
  }
  return all;
}
