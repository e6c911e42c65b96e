import type { BenchParts } from '../../../../src/edge/server/app.ts';
import { type Sharing, type SharingParts, sharing } from '../../../../src/edge/server/share/sharing.ts';
import { openMemoryStore } from '../../../../src/edge/store/memory/open.ts';
import type { Store } from '../../../../src/edge/store/store.ts';
import { ask, BENCH_ADDRESS, type BenchOn, benchOn, PHONE, PORT, postTo } from '../bench.ts';

/** A bench on a local network that exists only here, with a clock that stands still until it is moved. */
export interface SharedBench {
  app: BenchOn;
  store: Store;
  network: Sharing;
  /** Moves the clock on, ms. */
  pass(milliseconds: number): void;
  /** Addresses that were listened at, and those that were let go. */
  heard: string[];
  left: string[];
}

export function sharedBench(
  page: string,
  parts: Partial<SharingParts> = {},
  more: Partial<BenchParts> = {},
): SharedBench {
  let now = Date.UTC(2026, 4, 1, 10);
  const heard: string[] = [];
  const left: string[] = [];
  const store = openMemoryStore();
  const network = sharing({
    port: () => PORT,
    addresses: () => [BENCH_ADDRESS],
    async listenAt(address) {
      heard.push(address);
      return { port: PORT, address, stop: async () => void left.push(address) };
    },
    now: () => now,
    ...parts,
  });
  const app = benchOn(page, store, { sharing: network, now: () => now, ...more });
  const pass = (milliseconds: number) => {
    now += milliseconds;
  };
  return { app, store, network, pass, heard, left };
}

const SHARED_HOST = `${BENCH_ADDRESS}:${PORT}`;

/** What a request of a phone looks like: from its address, to the bench's. */
export function fromPhone(token?: string, from = PHONE) {
  const headers: Record<string, string> = { host: SHARED_HOST };
  if (token !== undefined) headers.authorization = `Bearer ${token}`;
  return { from, headers };
}

export interface Paired {
  token: string;
  role: string;
  device: { id: string; name: string; role: string };
}

/** Lets a phone in with a role and answers what it was given. */
export async function paired({ app, network }: SharedBench, role: 'keeper' | 'recorder' | 'reader'): Promise<Paired> {
  const { code } = await network.open(role);
  const answer = await postTo(app, '/api/pair', { code, name: `${role}'s phone` }, fromPhone());
  if (answer.status !== 200) throw new Error(`not let in: ${await answer.text()}`);
  return (await answer.json()) as Paired;
}

/** The refusal of an answer, in one text. */
export async function refusalOf(answer: Response): Promise<string> {
  const { error } = (await answer.json()) as { error: { found: string; expected: string; advice: string } };
  return `${error.found}; ${error.expected}; ${error.advice}`;
}

export { ask, postTo };
