/** A model of several devices and one server on a bad network, for properties that must hold whatever happens. */
import type { Entry } from '../../../src/journal/entry.ts';
import { type IdState, NO_ID_YET, newId, RANDOM_BYTES, seenId } from '../../../src/journal/newId.ts';
import {
  acknowledged,
  emptyOutbox,
  met,
  type Outbox,
  received,
  say,
  toSend,
} from '../../../src/journal/sync/outbox.ts';

const TRIAL = 'club';
const NOON = Date.UTC(2026, 9, 3, 12);
/** Small, so that a short history needs several batches and several pages. */
const BATCH = 3;
const PAGE = 4;

type Message =
  | { to: 'server'; device: number; post: Entry[] }
  | { to: 'server'; device: number; after: number }
  | { to: 'device'; device: number; store: string; kept: string[] }
  | { to: 'device'; device: number; store: string; entries: Entry[]; next: number; asked: number };

/** What the store promises: each entry once, numbered as it arrived. */
class Server {
  arrived: Entry[] = [];
  /** Drawn anew when the store is put back from an older copy. */
  store = 'store 0';
  #restored = 0;

  restore(kept: number): void {
    this.arrived = this.arrived.slice(0, kept);
    this.#restored++;
    this.store = `store ${this.#restored}`;
  }

  post(entries: readonly Entry[]): string[] {
    for (const entry of entries) if (!this.arrived.some(({ id }) => id === entry.id)) this.arrived.push(entry);
    return entries.map(({ id }) => id);
  }

  read(after: number): { entries: Entry[]; next: number } {
    const entries = this.arrived.slice(after, after + PAGE);
    return { entries, next: after + entries.length };
  }
}

export class Device {
  outbox: Outbox = emptyOutbox(TRIAL);
  /** How wrong its clock is, ms. */
  skew: number;
  online = true;
  #ids: IdState = NO_ID_YET;
  readonly #number: number;
  #made = 0;

  constructor(number: number, skew: number) {
    this.#number = number;
    this.skew = skew;
  }

  say(now: number, kind: string, body: Record<string, string>): Entry {
    const random = new Uint8Array(RANDOM_BYTES).map((_, i) => (this.#number * 41 + this.#made * 13 + i * 7) & 0xff);
    this.#made++;
    for (const { id } of this.outbox.journal.slice(-1)) this.#ids = seenId(this.#ids, id);
    const { id, state } = newId(this.#ids, now + this.skew, random);
    this.#ids = state;
    const at = new Date(now + this.skew).toISOString();
    const entry: Entry = { id, trial: TRIAL, kind, at, by: '', device: `d${this.#number}`, body };
    this.outbox = say(this.outbox, entry);
    return entry;
  }

  /** The page is closed and opened again: only what is on its disk is left, and what it knew of ids comes from there. */
  reload(): void {
    this.outbox = JSON.parse(JSON.stringify(this.outbox));
    this.#ids = NO_ID_YET;
  }
}

export class SyncBench {
  readonly server = new Server();
  readonly devices: Device[];
  /** Everything anybody ever said, and everything the server ever acknowledged to its writer. */
  readonly said: Entry[] = [];
  readonly acknowledged = new Set<string>();
  readonly #wire: Message[] = [];
  #now = NOON;

  constructor(skews: readonly number[]) {
    this.devices = skews.map((skew, number) => new Device(number, skew));
  }

  say(device: number, kind: string, body: Record<string, string>): void {
    this.#now += 1000;
    const writer = this.devices[device]!;
    const before = writer.outbox.journal.at(-1)?.id ?? '';
    const entry = writer.say(this.#now, kind, body);
    if (entry.id <= before) throw new Error(`${entry.id} does not come after ${before}, which its writer held`);
    this.said.push(entry);
  }

  send(device: number): void {
    const post = toSend(this.devices[device]!.outbox, BATCH);
    if (post.length > 0) this.#wire.push({ to: 'server', device, post });
  }

  read(device: number): void {
    this.#wire.push({ to: 'server', device, after: this.devices[device]!.outbox.after });
  }

  /** What happens to one message on its way; which one is up to chance, so messages overtake each other. */
  deliver(which: number, fate: 'arrives' | 'arrives twice' | 'is lost'): void {
    if (this.#wire.length === 0) return;
    const [message] = this.#wire.splice(which % this.#wire.length, 1) as [Message];
    if (fate === 'is lost' || !this.devices[message.device]!.online) return;
    this.#arrive(message);
    if (fate === 'arrives twice') this.#wire.push(message);
  }

  #arrive(message: Message): void {
    if (message.to === 'server') {
      const { device } = message;
      const { store } = this.server;
      if ('post' in message) this.#wire.push({ to: 'device', device, store, kept: this.server.post(message.post) });
      else this.#wire.push({ to: 'device', device, store, ...this.server.read(message.after), asked: message.after });
      return;
    }
    const device = this.devices[message.device]!;
    device.outbox = met(device.outbox, message.store);
    if ('kept' in message) {
      if (message.store === this.server.store) for (const id of message.kept) this.acknowledged.add(id);
      device.outbox = acknowledged(device.outbox, message.kept);
    } else device.outbox = received(device.outbox, message.entries, message.next, message.asked);
  }

  /** The server's disk dies and a copy takes its place that holds only what had arrived first. */
  restore(kept: number): void {
    this.server.restore(kept);
    this.acknowledged.clear();
  }

  /** The network is mended: everything sends and reads until nothing moves any more. */
  heal(): void {
    for (const device of this.devices) device.online = true;
    for (;;) {
      const before = this.#state();
      for (const number of this.devices.keys()) {
        this.send(number);
        this.read(number);
        while (this.#wire.length > 0) this.deliver(0, 'arrives');
      }
      if (this.#state() === before) return;
    }
  }

  #state(): string {
    const { outboxes, arrived } = { outboxes: this.devices.map(({ outbox }) => outbox), arrived: this.server.arrived };
    return JSON.stringify([
      arrived.length,
      ...outboxes.map((o) => [o.journal.length, o.unacknowledged.length, o.after]),
    ]);
  }
}
