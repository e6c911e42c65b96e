import type { Answered, Asked, JobKind, Jobs } from './jobs.ts';

/** Said when somebody stopped the work; nothing went wrong. */
export class Stopped extends Error {
  constructor() {
    super('Stopped.');
  }
}

interface Waiting {
  settle: (answer: unknown) => void;
  refuse: (reason: Error) => void;
  hear: (drawn: number) => void;
}

/**
 * One worker and the questions that it has not answered yet. `stop` ends the worker at once, whatever it computes; the
 * next question starts a fresh one.
 */
export class Bench {
  #worker: Worker | null = null;
  #number = 0;
  readonly #waiting = new Map<number, Waiting>();

  /** Asks for a job; `hear` is told how many random draws are done. */
  ask<K extends JobKind>(
    kind: K,
    ask: Jobs[K]['ask'],
    hear: (drawn: number) => void = () => {},
  ): Promise<Jobs[K]['answer']> {
    this.#number += 1;
    const number = this.#number;
    const answer = new Promise<Jobs[K]['answer']>((settle, refuse) => {
      this.#waiting.set(number, { settle: settle as (answer: unknown) => void, refuse, hear });
    });
    this.#start().postMessage({ number, kind, ask } as Asked);
    return answer;
  }

  /** Ends the work under way; every open question is refused with `Stopped`. */
  stop(): void {
    this.#end(new Stopped());
  }

  #start(): Worker {
    if (this.#worker !== null) return this.#worker;
    const worker = new Worker(new URL('./work.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', (event: MessageEvent<Answered>) => this.#hear(event.data));
    worker.addEventListener('error', (event) => {
      event.preventDefault();
      this.#end(
        new Error(`The computing stopped: ${event.message || 'its program could not be loaded'}. Load the page again.`),
      );
    });
    this.#worker = worker;
    return worker;
  }

  #hear(heard: Answered): void {
    const waiting = this.#waiting.get(heard.number);
    if ('drawn' in heard) {
      waiting?.hear(heard.drawn);
      return;
    }
    this.#waiting.delete(heard.number);
    if (heard.ok) waiting?.settle(heard.answer);
    else waiting?.refuse(new Error(heard.sentence));
  }

  #end(reason: Error): void {
    this.#worker?.terminate();
    this.#worker = null;
    const open = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const waiting of open) waiting.refuse(reason);
  }
}
