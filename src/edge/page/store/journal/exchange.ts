/** Keeps one trial's journal in step with the bench computer: sends what waits, reads on, listens, and tries again. */
import { acknowledged, met, type Outbox, received, refused, toSend } from '../../../../journal/sync/outbox.ts';
import { listen } from './live.ts';
import { readOn, send } from './wire.ts';

/** How the bench computer stands to this page: not asked yet, in step, or out of reach. */
export type Link = 'asking' | 'joined' | 'away';

export interface Journal {
  /** What is held now. */
  outbox(): Outbox;
  /** Takes a new state; settles once it is on disk here. */
  change(step: (now: Outbox) => Outbox): Promise<void>;
  /** Hands over photos that the store of this name may not have; answers what stood in the way. */
  sendPhotos(store: string): Promise<string | null>;
  /** Hears what of the trial the bench computer can no longer read; empty when nothing. */
  damaged(sentence: string): void;
  tell(link: Link, sentence: string): void;
}

/** Waits between tries while the bench computer is away, ms: soon at first, then seldom. Ours. */
const WAITS = [1000, 2000, 5000, 10_000] as const;

export class Exchange {
  readonly #journal: Journal;
  readonly #stop = new AbortController();
  #wake: () => void = () => {};
  #news = false;
  #listening = false;
  #failures = 0;

  constructor(journal: Journal) {
    this.#journal = journal;
    addEventListener('online', this.nudge, { signal: this.#stop.signal });
    void this.#run();
  }

  /** There is something to send or to read: does it now. */
  readonly nudge = (): void => {
    this.#news = true;
    this.#wake();
  };

  stop(): void {
    this.#stop.abort();
    this.#wake();
  }

  get #stopped(): boolean {
    return this.#stop.signal.aborted;
  }

  async #run(): Promise<void> {
    while (!this.#stopped) {
      this.#news = false;
      const trouble = await this.#inStep().catch((error: unknown) => String(error));
      if (this.#stopped) return;
      this.#failures = trouble === null ? 0 : this.#failures + 1;
      this.#journal.tell(trouble === null ? 'joined' : 'away', trouble ?? '');
      if (trouble === null) this.#listen();
      if (!this.#news) await this.#rest();
    }
  }

  /** Sends and reads until there is nothing more; null, or what stands in the way. */
  async #inStep(): Promise<string | null> {
    const { trial } = this.#journal.outbox();
    for (let batch = toSend(this.#journal.outbox()); batch.length > 0; batch = toSend(this.#journal.outbox())) {
      const sent = await send(trial, batch);
      if (!sent.ok) return sent.sentence;
      const { ids, refused: why, store } = sent.value;
      if (ids.length + why.size === 0) return 'The bench computer took nothing of what was sent.';
      await this.#journal.change((now) => refused(acknowledged(met(now, store || now.store), ids), why));
    }
    // Photos last: only now is the name of the store certain.
    return (await this.#readOn(trial)) ?? this.#journal.sendPhotos(this.#journal.outbox().store);
  }

  async #readOn(trial: string): Promise<string | null> {
    for (;;) {
      const { after, store } = this.#journal.outbox();
      const page = await readOn(trial, after);
      if (!page.ok) return page.sentence;
      const { entries, next, store: name = '', damaged } = page.value;
      this.#journal.damaged(damaged === undefined ? '' : `${damaged.found} ${damaged.advice}`);
      // Another store than before answers: what it said belongs to an old cursor, so the reading begins again.
      const strange = store !== '' && name !== '' && name !== store;
      const step = (now: Outbox) => met(now, name || now.store);
      await this.#journal.change((now) => (strange ? step(now) : received(step(now), entries, next, after)));
      if (strange) this.#news = true;
      // Not by the entries: all of a page may be damaged.
      if (strange || next === after) return null;
    }
  }

  #listen(): void {
    if (this.#listening) return;
    this.#listening = true;
    const { trial } = this.#journal.outbox();
    void listen(trial, this.nudge, this.#stop.signal).then(() => {
      this.#listening = false;
      if (!this.#stopped) setTimeout(this.nudge, WAITS[0]);
    });
  }

  /** Until something is said, something came, or it is time to try again. */
  #rest(): Promise<void> {
    return new Promise((settle) => {
      const wait = WAITS[Math.min(this.#failures, WAITS.length) - 1];
      const timer = this.#failures === 0 ? undefined : setTimeout(settle, wait);
      this.#wake = () => {
        clearTimeout(timer);
        settle();
      };
    });
  }
}
