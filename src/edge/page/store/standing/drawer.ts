import type { Entry } from '../../../../journal/entry.ts';
import { Bench } from '../../worker/bench.ts';
import type { Jobs, StandingSaid } from '../../worker/jobs.ts';

type Ask = Omit<Jobs['standing']['ask'], 'fresh'>;

/** A worker that keeps a trial's draws; entries are sent to it once. */
export class Drawer {
  readonly #bench = new Bench();
  #has: readonly Entry[] | null = null;

  async ask(entries: readonly Entry[], ask: Ask, hear?: (drawn: number) => void): Promise<StandingSaid | null> {
    const fresh = this.#has === entries ? null : entries;
    this.#has = entries;
    try {
      return await this.#bench.ask('standing', { ...ask, fresh }, hear);
    } catch (error) {
      this.#has = null;
      throw error;
    }
  }

  /** Ends whatever it computes; what it held is drawn anew the next time. */
  stop(): void {
    this.#has = null;
    this.#bench.stop();
  }
}
