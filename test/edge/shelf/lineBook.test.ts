import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { lineBook, wholeShelf } from '../../../src/edge/shelf/lineBook.ts';
import { rememberedIn } from '../../../src/edge/shelf/rememberedLines.ts';
import { trialLines } from '../../../src/edge/shelf/trialLines.ts';
import { openMemoryStore } from '../../../src/edge/store/memory/open.ts';
import { ShelfCable } from '../../../src/findings/shapes/shelf.ts';
import type { Entry } from '../../../src/journal/entry.ts';
import { sealRow } from '../../../src/report/publish/seal.ts';
import { Bench } from '../../findings/bench.ts';
import { SEAL_ASKED } from '../../support/sealAsked.ts';
import { tempFolder } from '../../support/tempFolder.ts';

function measured(): Bench {
  return new Bench()
    .carefulTools()
    .cable('quill', '2 AWG', 'OFC', {
      maker: 'Quill',
      lot: '24-07',
      shared_name: 'house',
      price: '20',
      price_per: 'metre',
    })
    .piece('p', 'quill')
    .everything('p', 33.9)
    .read('p', 'outer_diameter', '12.1', 'mm', { temperature: '21', at: '2026-10-03 10:00' })
    .read('p', 'outer_diameter', '12.1', 'mm', { temperature: '19', at: '2026-10-01 10:00' });
}

/** The same entries as another trial. */
const as = (trial: string, entries: readonly Entry[]): Entry[] => entries.map((entry) => ({ ...entry, trial }));

async function shelfOf(...trials: string[]) {
  const store = openMemoryStore();
  const { entries } = measured();
  for (const trial of trials) await store.append(trial, as(trial, entries));
  return store;
}

describe('what the shelf remembers of a trial', () => {
  it('is a line for each cable, of the shape that is published', () => {
    const [line] = trialLines(measured().entries, 'bench');
    expect(ShelfCable.parse(line)).toEqual(line);
    expect(line).toMatchObject({ name: 'Quill', lot: '24-07', shared_name: 'house', price_per_m: 20, state: 'open' });
    expect(line!.day).toBe('2026-10-03');
    expect(line!.temperature_C![0]).toBeCloseTo(19, 9);
    expect(line!.temperature_C![1]).toBeCloseTo(21, 9);
    expect(line!.conductor_area!.value).toBeGreaterThan(33);
    expect(line!.resistance_20C!.unit).toBe('mohm/m');
  });

  it('goes by codes while the trial is blind, and tells neither lot, price nor the shared name', () => {
    const { entries } = measured().say('blinding', { act: 'blind', how: 'sleeve' });
    const text = JSON.stringify(trialLines(entries, 'bench'));
    expect(text).toContain('"state":"blind"');
    for (const hidden of ['Quill', 'quill', '24-07', 'house']) expect(text).not.toContain(hidden);
  });

  it('is nothing for a trial that was put away', () => {
    const b = measured();
    b.say('withdrawal', { withdrawal: 'w1', about: 'trial', which: b.entries[0]!.trial, why: 'made twice' });
    expect(trialLines(b.entries, 'bench')).toEqual([]);
  });

  it('is nothing for readers before something is sealed, and then what is sealed', () => {
    const b = measured();
    expect(trialLines(b.entries, 'reader')).toEqual([]);
    b.say('seal', sealRow(b.entries, { ...SEAL_ASKED, places: ['bend'] }));
    const [line] = trialLines(b.entries, 'reader');
    expect(line!.state).toBe('sealed in part');
    expect(line!.resistance_20C).toBeNull();
  });
});

describe('the book of lines', () => {
  it('tells only what changed since, and what is gone', async () => {
    const store = await shelfOf('a', 'b');
    const book = lineBook(store);
    const first = await book('bench', {}, Infinity);
    expect(first.trials.map(({ trial }) => trial).sort()).toEqual(['a', 'b']);
    const have = Object.fromEntries(first.trials.map(({ trial, mark }) => [trial, mark]));
    expect(await book('bench', have, Infinity)).toEqual({ trials: [], left: 0, gone: [], damaged: [] });
    const b = measured().cable('rush', '2 AWG', 'OFC');
    await store.append('b', as('b', b.entries));
    const news = await book('bench', { ...have, old: 'x' }, Infinity);
    expect(news.trials.map(({ trial, cables }) => [trial, cables.length])).toEqual([['b', 2]]);
    expect(news.gone).toEqual(['old']);
  });

  it('computes a trial at a time when it has no patience, and says what is left', async () => {
    const book = lineBook(await shelfOf('a', 'b', 'c'));
    const have: Record<string, string> = {};
    for (const left of [2, 1, 0]) {
      const news = await book('bench', have, 0);
      expect(news.left).toBe(left);
      expect(news.trials.length).toBe(1);
      for (const { trial, mark } of news.trials) have[trial] = mark;
    }
  });

  it('remembers beside the shelf, computes nothing twice, and passes over what was cut off', async () => {
    const file = join(tempFolder(), 'shelf-lines.jsonl');
    const store = await shelfOf('a', 'b');
    const { cables } = await wholeShelf(lineBook(store, rememberedIn(file)), 'bench');
    const text = readFileSync(file, 'utf8');
    expect(text.trim().split('\n').length).toBe(2);
    const untouched = { ...store, entries: () => Promise.reject(new Error('asked again')) };
    expect((await wholeShelf(lineBook(untouched, rememberedIn(file)), 'bench')).cables).toEqual(cables);
    writeFileSync(file, text.slice(0, -40));
    expect((await wholeShelf(lineBook(store, rememberedIn(file)), 'bench')).cables).toEqual(cables);
    await expect(wholeShelf(lineBook(untouched, rememberedIn(`${file}.none`)), 'bench')).rejects.toThrow('asked again');
  });

  it('tells readers neither the name nor the length of what is not sealed', async () => {
    const store = await shelfOf('secret');
    expect(await lineBook(store)('reader', {})).toEqual({ trials: [], left: 0, gone: [], damaged: [] });
    const b = measured();
    b.say('seal', sealRow(b.entries, SEAL_ASKED));
    await store.append('open', as('open', b.entries));
    const book = lineBook(store);
    const { trials } = await book('reader', {});
    expect(trials.map(({ trial }) => trial)).toEqual(['open']);
    expect(trials[0]!.mark).toMatch(/^[0-9a-f]{64}$/);
    expect((await book('reader', { open: trials[0]!.mark })).trials).toEqual([]);
  });
});
