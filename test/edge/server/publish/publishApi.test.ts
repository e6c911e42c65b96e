/** Reports and cards through the server, and what readers are told of a trial. */
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { verifySealed } from '../../../../src/edge/cli/verifySealed.ts';
import type { PartChecked } from '../../../../src/edge/publish/checkedParts.ts';
import type { PartPlace } from '../../../../src/journal/kinds/seal.ts';
import { readPackage } from '../../../../src/report/package/readPackage.ts';
import { sealedFolders } from '../../../../src/report/package/sealedFiles.ts';
import { unzipPackage } from '../../../../src/report/package/zip.ts';
import { sealRow } from '../../../../src/report/publish/seal.ts';
import { fold } from '../../../../src/trial/fold.ts';
import { Bench } from '../../../findings/bench.ts';
import { SEAL_ASKED } from '../../../support/sealAsked.ts';
import { tempFolder } from '../../../support/tempFolder.ts';
import { smallPage } from '../bench.ts';
import { ask, fromPhone, paired, type SharedBench, sharedBench } from '../share/shared.ts';

const page = smallPage(tempFolder());
const SHA = 'ab'.repeat(32);

function measured(): Bench {
  return new Bench()
    .carefulTools()
    .cable('x', '2 AWG', 'OFC')
    .piece('p', 'x')
    .everything('p', 33.9)
    .read('p', 'overhang', '300', 'mm', { set: 'd', instrument: 'rule' })
    .read('p', 'tip_drop', '120', 'mm', { set: 'd', position: 'up', instrument: 'rule' });
}

function seal(b: Bench, places: PartPlace[], hidden = false): Bench {
  const part = String(b.entries.filter(({ kind }) => kind === 'seal').length + 1);
  return b.say('seal', sealRow(b.entries, { ...SEAL_ASKED, part, places, hidden }));
}

async function shelfWith(b: Bench): Promise<SharedBench & { trial: string }> {
  const bench = sharedBench(page);
  const trial = b.entries[0]!.trial;
  await bench.store.append(trial, b.entries);
  await bench.network.open('reader');
  return { ...bench, trial };
}

const query = (trial: string, more: Record<string, string> = {}) => new URLSearchParams({ trial, ...more }).toString();

describe('a report through the server', () => {
  it('is a whole page or a PDF, of the trial as it stands, of chosen places, of a sealed part', async () => {
    const { app, trial } = await shelfWith(seal(measured(), ['inside']));
    const whole = await ask(app, `/api/report?${query(trial)}`);
    expect(whole.headers.get('content-disposition')).toBe('attachment; filename="report.html"');
    expect(await whole.text()).toMatch(/^<!DOCTYPE html>[\s\S]*how they bend|<!DOCTYPE html>[\s\S]*Bend/);
    const inside = await (
      await ask(app, `/api/report?${query(trial, { places: 'inside', licence: 'CC0-1.0' })}`)
    ).text();
    expect(inside).not.toContain('id="bend"');
    expect(inside).toContain('CC0 1.0');
    const sealed = await (await ask(app, `/api/report?${query(trial, { part: '1' })}`)).text();
    expect(sealed).toContain('sealed 2026-11-01');
    const pdf = await ask(app, `/api/report?${query(trial, { part: '1', form: 'pdf', paper: 'letter' })}`);
    expect(pdf.headers.get('content-type')).toBe('application/pdf');
    expect(
      Buffer.from(await pdf.arrayBuffer())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
  });

  it.each<[Record<string, string>, number]>([
    [{ form: 'doc' }, 400],
    [{ form: 'pdf', paper: 'a3' }, 400],
    [{ part: '9' }, 404],
  ])('refuses %j', async (more, status) => {
    const { app, trial } = await shelfWith(measured());
    expect((await ask(app, `/api/report?${query(trial, more)}`)).status).toBe(status);
  });
});

describe('a card through the server', () => {
  it('is a PNG of the size that was asked for, with or without a ground', async () => {
    const { app, trial } = await shelfWith(measured());
    const asked = query(trial, { cable: 'x', size: '1080x1080', transparent: 'yes' });
    const drawn = PNG.sync.read(Buffer.from(await (await ask(app, `/api/card?${asked}`)).arrayBuffer()));
    expect([drawn.width, drawn.height]).toEqual([1080, 1080]);
    expect(drawn.data[3]).toBe(0);
    const svg = await ask(app, `/api/card?${query(trial, { cable: 'x', form: 'svg' })}`);
    expect(await svg.text()).toMatch(/^<svg/);
  });

  it.each<Record<string, string>>([
    { kind: 'poster' },
    { size: '1x1' },
    { cable: 'nobody' },
    { kind: 'two', cable: 'x' },
    { step: '9', cable: 'x' },
  ])('refuses %j', async (more) => {
    const { app, trial } = await shelfWith(measured());
    expect((await ask(app, `/api/card?${query(trial, more)}`)).status).toBe(400);
  });
});

describe('parts through the server', () => {
  it('are sealed by a row that it computes, come out the same, and travel in a package that anybody can check', async () => {
    const b = measured();
    const { app, trial, store } = await shelfWith(b);
    const asked = query(trial, { part: '1', title: '=cmd()', places: 'inside', by: 'Ann' });
    const row = (await (await ask(app, `/api/seal?${asked}`)).json()) as Record<string, string>;
    expect((await store.entries(trial)).some(({ kind }) => kind === 'seal')).toBe(false);
    b.say('seal', row);
    await store.append(trial, b.entries);
    expect(await (await ask(app, `/api/parts?${query(trial)}`)).json()).toEqual([
      { part: '1', again: 'same', changed: { changes: [], corrections: [] } },
    ]);
    const reading = b.entries.find(({ body }) => body.quantity === 'conductor_mass')!.body.reading!;
    b.say('strike', { reading, why: 'wrong piece' });
    await store.append(trial, b.entries);
    const [since] = (await (await ask(app, `/api/parts?${query(trial)}`)).json()) as PartChecked[];
    expect(since!.again).toBe('same');
    expect(since!.changed!.corrections).toHaveLength(1);
    const zip = await ask(app, `/api/package?${query(trial, { licence: 'CC-BY-SA-4.0' })}`);
    const files = unzipPackage(new Uint8Array(await zip.arrayBuffer()));
    expect(JSON.parse(new TextDecoder().decode(files.get('datapackage.json'))).licenses).toEqual([
      { name: 'CC-BY-SA-4.0', title: 'CC BY-SA 4.0', path: 'https://creativecommons.org/licenses/by-sa/4.0/' },
    ]);
    const again = readPackage(files, { now: '2026-12-01T00:00:00Z' });
    expect(again.refusals).toEqual([]);
    const part = fold(again.entries).parts[0]!;
    expect(verifySealed(part, sealedFolders(files).get(1), 0, '2026-12-01T00:00:00Z').outcome).toBe('same');
  });

  it.each<[Record<string, string>, RegExp]>([
    [{ part: '1', places: 'inside' }, /sealed already/],
    [{ part: ' ', places: 'inside' }, /no name/],
    [{ part: '../x', places: 'inside' }, /letters, digits/],
    [{ part: '2', places: 'kitchen' }, /needs a place/],
  ])('are not sealed by %j', async (more, said) => {
    const { app, trial } = await shelfWith(seal(measured(), ['inside']));
    const answer = await ask(app, `/api/seal?${query(trial, more)}`);
    expect(answer.status).toBe(400);
    expect(await answer.text()).toMatch(said);
  });

  it('are not sealed by a reader', async () => {
    const { app, trial, ...bench } = await shelfWith(measured());
    const { token } = await paired({ app, ...bench }, 'reader');
    const asked = `/api/seal?${query(trial, { part: '1', places: 'inside' })}`;
    expect((await ask(app, asked, fromPhone(token))).status).toBe(403);
  });
});

describe('a reader', () => {
  it('is told nothing until a part is sealed, and then nothing of other places', async () => {
    const open = await shelfWith(measured());
    const reader = await paired(open, 'reader');
    const nothing = await ask(open.app, `/api/entries?${query(open.trial)}`, fromPhone(reader.token));
    expect(nothing.status).toBe(404);
    expect((await ask(open.app, `/api/report?${query(open.trial)}`, fromPhone(reader.token))).status).toBe(404);

    const b = seal(measured(), ['inside']);
    b.say('note', { note: 'n1', about: 'cable', which: 'x', text: 'said afterwards', photo: SHA });
    const { app, trial, ...bench } = await shelfWith(b);
    const { token } = await paired({ app, ...bench }, 'reader');
    const told = await (await ask(app, `/api/entries?${query(trial, { after: '3' })}`, fromPhone(token))).text();
    expect(told).toContain('conductor_mass');
    expect(told).not.toMatch(/overhang|tip_drop|said afterwards/);
    expect(JSON.parse(told).next).toBe(3);
    const mine = await paired({ app, ...bench }, 'recorder');
    expect(await (await ask(app, `/api/entries?${query(trial)}`, fromPhone(mine.token))).text()).toContain('overhang');
    expect((await ask(app, `/api/report?${query(trial, { part: '1' })}`, fromPhone(token))).status).toBe(200);
    expect((await ask(app, `/api/card?${query(trial, { cable: 'x' })}`, fromPhone(token))).status).toBe(404);
  });

  it('is not told of hidden parts until they are shown', async () => {
    const b = seal(measured(), ['bend'], true);
    const { app, trial, store, ...bench } = await shelfWith(b);
    const { token } = await paired({ app, store, ...bench }, 'reader');
    const asked = `/api/entries?${query(trial)}`;
    expect((await ask(app, asked, fromPhone(token))).status).toBe(404);
    expect((await ask(app, `/api/report?${query(trial, { part: '1' })}`, fromPhone(token))).status).toBe(404);
    b.say('seal', { ...b.entries.find(({ kind }) => kind === 'seal')!.body, hidden: 'no' });
    await store.append(trial, b.entries);
    const told = await (await ask(app, asked, fromPhone(token))).text();
    expect(told).toContain('tip_drop');
    expect(told).not.toContain('conductor_mass');
  });

  it('gets the photos that its rows name, and no others', async () => {
    const { app, trial, store, ...bench } = await shelfWith(seal(measured(), ['inside']));
    const name = await store.putBlob(trial, new TextEncoder().encode('t,ohm\n1,2\n'));
    const { token } = await paired({ app, store, ...bench }, 'reader');
    expect((await ask(app, `/api/blobs/${name}?${query(trial)}`, fromPhone(token))).status).toBe(404);
    expect((await ask(app, `/api/blobs/${name}?${query(trial)}`)).status).toBe(200);
  });
});
