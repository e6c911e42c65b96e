/** The cables of all trials as the bench tells them, and what readers get of them. */
import { describe, expect, it } from 'vitest';
import type { ShelfNews } from '../../../src/edge/shelf/lineBook.ts';
import { Bench } from '../../findings/bench.ts';
import { tempFolder } from '../../support/tempFolder.ts';
import { postTo, smallPage } from './bench.ts';
import { fromPhone, paired, sharedBench } from './share/shared.ts';

const page = smallPage(tempFolder());

async function shelf() {
  const bench = sharedBench(page);
  const b = new Bench().carefulTools().cable('x', '2 AWG', 'OFC').piece('p', 'x').everything('p', 33.9);
  const trial = b.entries[0]!.trial;
  await bench.store.append(trial, b.entries);
  return { ...bench, trial };
}

describe('POST /api/cables', () => {
  it('tells everything once, and nothing again to whoever holds it', async () => {
    const { app, trial } = await shelf();
    const answer = await postTo(app, '/api/cables', {});
    expect(answer.status).toBe(200);
    const news = (await answer.json()) as ShelfNews;
    expect(news.trials.map((each) => [each.trial, each.cables.map(({ cable }) => cable)])).toEqual([[trial, ['x']]]);
    const again = await postTo(app, '/api/cables', { have: { [trial]: news.trials[0]!.mark } });
    expect(((await again.json()) as ShelfNews).trials).toEqual([]);
  });

  it.each([['{"have": 3}'], ['[]'], ['nonsense']])('refuses %s with a sentence', async (body) => {
    const { app } = await shelf();
    const answer = await postTo(app, '/api/cables', body);
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ error: { expected: expect.stringContaining('have') } });
  });

  it('tells a stranger nothing, and a reader nothing that is not sealed', async () => {
    const bench = await shelf();
    const { token } = await paired(bench, 'reader');
    expect((await postTo(bench.app, '/api/cables', {}, fromPhone())).status).toBe(401);
    const answer = await postTo(bench.app, '/api/cables', {}, fromPhone(token));
    expect(await answer.json()).toEqual({ trials: [], left: 0, gone: [], damaged: [] });
  });
});
