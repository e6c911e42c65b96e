import type { Entry } from '../../src/journal/entry.ts';
import { fold } from '../../src/trial/fold.ts';
import { ask } from '../edge/server/bench.ts';
import { type SharedBench, sharedBench } from '../edge/server/share/shared.ts';
import { chanceFrom } from './chance.ts';
import { type Fuzzed, newFuzzed, troubled } from './fuzzed.ts';
import { type MadeRequest, madeRequest } from './madeRequest.ts';

/** After so many requests the bench starts over with an empty store, so that looking through it stays quick. */
const IN_ONE_STORE = 2000;

/** What was acknowledged first for each trial and id: the store must hold exactly that. */
type Acknowledged = Map<string, Map<string, string>>;

/**
 * Sends made-up requests to the bench, without a network between. It must answer each with less than 500, say why when it
 * refuses, and hold every entry that it acknowledged, as it was first sent; and what it holds must fold.
 */
export async function fuzzHttp(bodies: number, seed: number, page: string): Promise<Fuzzed> {
  const chance = chanceFrom(seed);
  const fuzzed = newFuzzed();
  while (fuzzed.bodies < bodies) {
    const bench = sharedBench(
      page,
      {},
      { onTrouble: (error) => troubled(fuzzed, error, 'the request after this one') },
    );
    const acknowledged: Acknowledged = new Map();
    for (let n = 0; n < IN_ONE_STORE && fuzzed.bodies < bodies; n += 1) {
      bench.pass(1000);
      const made = madeRequest(chance);
      try {
        await sendOne(bench, made, acknowledged, fuzzed);
      } catch (error) {
        troubled(fuzzed, error, `${made.method} ${made.path} ${JSON.stringify(made.headers)} ${textOf(made)}`);
      }
      fuzzed.bodies += 1;
    }
    await compareStore(bench, acknowledged, fuzzed);
  }
  return fuzzed;
}

async function sendOne(
  bench: SharedBench,
  made: MadeRequest,
  acknowledged: Acknowledged,
  fuzzed: Fuzzed,
): Promise<void> {
  const answer = await ask(bench.app, made.path, made);
  fuzzed.outcomes[answer.status] = (fuzzed.outcomes[answer.status] ?? 0) + 1;
  if (answer.status >= 500) throw new Error(`answered ${answer.status}: ${await answer.text()}`);
  if (answer.headers.get('content-type')?.startsWith('text/event-stream')) return answer.body?.cancel();
  const text = await answer.text();
  if (answer.status >= 400 && made.method !== 'HEAD') {
    const { error } = JSON.parse(text) as { error?: Record<string, string> };
    if (!error?.found || !error.expected || !error.advice)
      throw new Error(`refused without words: ${text.slice(0, 200)}`);
  }
  if (made.method === 'POST' && made.path === '/api/entries' && answer.status === 200)
    note(made, text, acknowledged, fuzzed);
}

function note(made: MadeRequest, answered: string, acknowledged: Acknowledged, fuzzed: Fuzzed): void {
  const { accepted, refused } = JSON.parse(answered) as { accepted: string[]; refused: { entry: number }[] };
  const { trial, entries } = JSON.parse(textOf(made)) as { trial: string; entries: Entry[] };
  const not = new Set(refused.map(({ entry }) => entry - 1));
  const taken = entries.filter((_, place) => !not.has(place));
  const sent = new Map(taken.reverse().map((entry) => [entry.id, JSON.stringify(entry.body)]));
  const held = acknowledged.get(trial) ?? new Map<string, string>();
  acknowledged.set(trial, held);
  if (accepted.length + refused.length !== entries.length)
    throw new Error(`accepted ${accepted.length} and refused ${refused.length} of ${entries.length}`);
  for (const id of accepted) {
    const body = sent.get(id);
    if (body === undefined) throw new Error(`accepted ${id}, which was not sent`);
    if (!held.has(id)) held.set(id, body);
  }
  fuzzed.accepted += accepted.length;
}

async function compareStore({ store }: SharedBench, acknowledged: Acknowledged, fuzzed: Fuzzed): Promise<void> {
  for (const [trial, wanted] of acknowledged) {
    const { entries } = await store.entriesSince(trial, 0);
    const held = new Map(entries.map((entry) => [entry.id, JSON.stringify(entry.body)]));
    for (const [id, body] of wanted)
      if (held.get(id) !== body)
        troubled(fuzzed, new Error('an acknowledged entry is lost or changed'), `${id} ${body} became ${held.get(id)}`);
    if (held.size !== wanted.size)
      troubled(fuzzed, new Error(`holds ${held.size} and acknowledged ${wanted.size}`), trial);
    try {
      fold(entries);
    } catch (error) {
      troubled(fuzzed, error, `a fold of ${entries.length} entries of ${trial}`);
    }
  }
}

function textOf({ body }: MadeRequest): string {
  return body === undefined ? '' : new TextDecoder().decode(body);
}
