import type { Store } from '../../store/store.ts';
import { type LiveStream, liveStream } from './liveStream.ts';

/** Everyone who listens for news of a trial. */
export interface LiveHub {
  /**
   * A stream of events for one listener; `device` is null for this computer itself. With `seen`, which counts the entries that the
   * listener may see, only a growth of that number is told, and only when the store is looked at: others' work shows in nothing.
   */
  listen(
    trial: string,
    device: string | null,
    seen?: (() => Promise<number>) | null,
  ): Promise<ReadableStream<Uint8Array>>;
  /** Tells a trial's listeners that its journal reaches up to `last`. */
  tell(trial: string, last: number): void;
  /** Ends the streams of a device that was turned away. */
  drop(device: string): void;
  /** Ends every stream, and takes no more listeners. */
  close(): void;
  /** How many listen now. */
  listeners(): number;
}

export interface LivePace {
  /** How often a silent stream gets a sign of life, ms. */
  beatMs: number;
  /** How often the store is asked for what another program wrote, ms. */
  lookMs: number;
}

/** Proxies close a connection that is silent for a minute or so. Ours. */
const USUAL_PACE: LivePace = { beatMs: 15_000, lookMs: 3000 };

interface Listener extends LiveStream {
  trial: string;
  device: string | null;
  /** Null for those who may see everything. */
  seen: (() => Promise<number>) | null;
  /** Last number that was told to one who may not. */
  seenTold: number;
}

/**
 * Tells listeners of what was appended: at once when it came through this server, and within `lookMs` when another program
 * wrote to the same store (an import on the command line, another server over one database).
 */
export function liveHub(
  store: Store,
  { beatMs, lookMs }: LivePace = USUAL_PACE,
  onTrouble: (error: unknown) => void = () => {},
): LiveHub {
  const listeners = new Set<Listener>();
  const told = new Map<string, number>();
  let timers: NodeJS.Timeout[] = [];
  let closed = false;

  const tell = (trial: string, last: number) => {
    if (last <= (told.get(trial) ?? -1)) return;
    const ofTrial = [...listeners].filter((one) => one.trial === trial && one.seen === null);
    if (ofTrial.length > 0) told.set(trial, last);
    for (const one of ofTrial) one.tell(last);
  };
  const drop = (device: string) => {
    for (const one of [...listeners]) if (one.device === device) one.close();
  };
  const look = () => lookForNews(store, [...listeners], tell, drop).catch(onTrouble);
  const beat = () => {
    for (const one of listeners) one.beat();
  };
  const begin = () => {
    timers = [setInterval(() => beat(), beatMs), setInterval(() => void look(), lookMs)];
    for (const timer of timers) timer.unref();
  };
  const gone = (listener: Listener) => {
    listeners.delete(listener);
    if (![...listeners].some((one) => one.trial === listener.trial)) told.delete(listener.trial);
    if (listeners.size > 0) return;
    for (const timer of timers) clearInterval(timer);
    timers = [];
  };

  return {
    async listen(trial, device, seen = null) {
      const listener: Listener = { ...liveStream(() => gone(listener)), trial, device, seen, seenTold: 0 };
      listeners.add(listener);
      if (timers.length === 0) begin();
      try {
        // Asked only after listening began, so that nothing falls between.
        if (seen !== null) await tellSeen(listener);
        else {
          const { last } = await store.append(trial, []);
          told.set(trial, Math.max(last, told.get(trial) ?? 0));
          listener.tell(last);
        }
      } catch (error) {
        listener.close();
        throw error;
      }
      if (closed) listener.close();
      return listener.stream;
    },
    tell,
    drop,
    close() {
      closed = true;
      for (const one of [...listeners]) one.close();
    },
    listeners: () => listeners.size,
  };
}

async function lookForNews(
  store: Store,
  listeners: readonly Listener[],
  tell: LiveHub['tell'],
  drop: LiveHub['drop'],
): Promise<void> {
  for (const trial of new Set(listeners.map((one) => one.trial))) {
    const { last } = await store.append(trial, []);
    tell(trial, last);
  }
  for (const listener of listeners) await tellSeen(listener);
  if (!listeners.some((one) => one.device !== null)) return;
  for (const device of await store.devices()) if (device.revokedAt !== null) drop(device.id);
}

/** Tells a listener who may not see everything how much there is to see, where that has grown. */
async function tellSeen(listener: Listener): Promise<void> {
  const seen = (await listener.seen?.()) ?? 0;
  if (seen <= listener.seenTold) return;
  listener.seenTold = seen;
  listener.tell(seen);
}
