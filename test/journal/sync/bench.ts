/** A model of several devices and one server on a bad network, for properties that must hold whatever happens. */
import { checkBody } from '../../../src/journal/bodyCheck.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { type IdState, NO_ID_YET, newId, RANDOM_BYTES, seenId } from '../../../src/journal/newId.ts';
import {
  acknowledged,
  emptyOutbox,
  met,
  type Outbox,
  received,
  refused,
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
  | { to: 'server'; device: number; photo: string; met: string }
  | { to: 'device'; device: number; store: string; kept: string[]; not: Map<string, string> }
  | { to: 'device'; device: number; photo: string; met: string }
  | { to: 'device'; device: number; store: string; entries: Entry[]; next: number; asked: number };

/** What the store promises: each entry once, numbered as it arrived. */
class Server {
  arrived: Entry[] = [];
  /** Photos, by the hash of their content. */
  readonly photos = new Set<string>();
  /** Drawn anew when the store is put back from an older copy. */
  store = 'store 0';
  #restored = 0;

  restore(kept: number): void {
    this.arrived = this.arrived.slice(0, kept);
    this.photos.clear();
    this.#restored++;
    this.store = `store ${this.#restored}`;
  }

  /** What an impossible row gets is a sentence; the others are kept. */
  post(entries: readonly Entry[]): { kept: string[]; not: Map<string, string> } {
    const not = new Map<string, string>();
    for (const entry of entries) {
      const problem = checkBody(entry, NOON);
      if (problem !== null) not.set(entry.id, `found ${problem.found}`);
      else if (!this.arrived.some(({ id }) => id === entry.id)) this.arrived.push(entry);
    }
    return { kept: entries.map(({ id }) => id).filter((id) => !not.has(id)), not };
  }

  read(after: number): { entries: Entry[]; next: number } {
    const entries = this.arrived.slice(after, after + PAGE);
    return { entries, next: after + entries.length };
  }
}

export class Device {
  outbox: Outbox = emptyOutbox(TRIAL);
  /** Photos taken here, each with the name of the store that is known to have it. */
  readonly photos = new Map<string, string>();
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

  photosToSend(): string[] {
    return [...this.photos].filter(([, store]) => store !== this.outbox.store).map(([photo]) => photo);
  }

  /** The page is closed and opened again: only what is on its disk is left, and what it knew of ids comes from there. */
  reload(): void {
    this.outbox = { ...JSON.parse(JSON.stringify(this.outbox)), refused: {} };
    this.#ids = NO_ID_YET;
  }
}

export class SyncBench {
  readonly server = new Server();
  readonly devices: Device[];
  /** Everything anybody ever said, and everything the server ever acknowledged to its writer. */
  readonly said: Entry[] = [];
  readonly acknowledged = new Set<string>();
  /** Every photo anybody took. */
  readonly photos = new Set<string>();
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

  /** A note that names a photo, which goes its own way: it may come before the note, after it, and twice. */
  photograph(device: number, content: string, body: Record<string, string>): void {
    this.devices[device]!.photos.set(content, 'none');
    this.photos.add(content);
    this.say(device, 'note', { ...body, photo: content });
  }

  send(device: number): void {
    const post = toSend(this.devices[device]!.outbox, BATCH);
    if (post.length > 0) this.#wire.push({ to: 'server', device, post });
    for (const photo of this.devices[device]!.photosToSend())
      this.#wire.push({ to: 'server', device, photo, met: this.devices[device]!.outbox.store });
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
      if ('photo' in message) {
        this.server.photos.add(message.photo);
        this.#wire.push({ ...message, to: 'device' });
      } else if ('post' in message) this.#wire.push({ to: 'device', device, store, ...this.server.post(message.post) });
      else this.#wire.push({ to: 'device', device, store, ...this.server.read(message.after), asked: message.after });
      return;
    }
    const device = this.devices[message.device]!;
    if ('photo' in message) {
      device.photos.set(message.photo, message.met);
      return;
    }
    device.outbox = met(device.outbox, message.store);
    if ('kept' in message) {
      if (message.store === this.server.store) for (const id of message.kept) this.acknowledged.add(id);
      device.outbox = refused(acknowledged(device.outbox, message.kept), message.not);
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
      this.server.photos.size,
      ...outboxes.map((o) => [o.journal.length, o.unacknowledged.length, Object.keys(o.refused).length, o.after]),
      ...this.devices.map((device) => device.photosToSend().length),
    ]);
  }
}
