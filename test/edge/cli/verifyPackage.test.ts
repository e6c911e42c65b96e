/** What is said of a package that is as it was, that was changed, and that another version would compute otherwise. */
import { describe, expect, it } from 'vitest';
import { sealedParts } from '../../../src/edge/cli/sealedParts.ts';
import { verifyPackage } from '../../../src/edge/cli/verifyPackage.ts';
import { findingsOf } from '../../../src/findings/findings.ts';
import { findingsText } from '../../../src/report/findingsText.ts';
import { readPackage } from '../../../src/report/package/readPackage.ts';
import { sealedFolders } from '../../../src/report/package/sealedFiles.ts';
import { writePackage } from '../../../src/report/package/writePackage.ts';
import { findingsHash, sealRow, unseal } from '../../../src/report/publish/seal.ts';
import { fold } from '../../../src/trial/fold.ts';
import { Bench } from '../../findings/bench.ts';
import { SEAL_ASKED } from '../../support/sealAsked.ts';

const NOW = '2026-12-01T00:00:00Z';

function sealedBench(change: (row: Record<string, string>, b: Bench) => Record<string, string> = (row) => row): Bench {
  const b = new Bench().carefulTools().cable('x', '2 AWG', 'OFC').piece('p', 'x').everything('p', 33.9);
  const row = sealRow(b.entries, { ...SEAL_ASKED, at: NOW });
  return b.say('seal', change(row, b));
}

/** The findings of the part as an earlier version would have written them: one figure a thousandth larger. */
function earlierFindings(b: Bench, row: Record<string, string>) {
  const again = unseal(b.entries, fold([...new Bench().entries, ...sealEntry(b, row)]).parts[0]!)!;
  const findings = structuredClone(again.findings);
  findings.engine.version = '0.0.9';
  findings.cables[0]!.conductor_area!.value *= 1.001;
  return { findings, hash: findingsHash({ trial: again.trial, findings }) };
}
const sealEntry = (b: Bench, body: Record<string, string>) => [{ ...b.entries[0]!, kind: 'seal', body }];

/** The files of a package with findings and sealed parts. */
function packed(b: Bench, brought = new Map<number, Map<string, Uint8Array>>()) {
  const trial = fold(b.entries);
  const findings = findingsText(findingsOf(trial, { level: 0.95, draws: 0 }));
  const sealed = sealedParts(b.entries, trial, brought);
  return { sealed, files: new Map([...writePackage(trial), ['findings.json', findings], ...sealed.files]) };
}

const bytesOf = (text: string | Uint8Array): Uint8Array =>
  typeof text === 'string' ? new TextEncoder().encode(text) : text;

function verified(files: ReadonlyMap<string, string | Uint8Array>) {
  const bytes = new Map([...files].map(([path, text]) => [path, bytesOf(text)]));
  const text = (file: string) => {
    const found = bytes.get(file);
    return found === undefined ? null : new TextDecoder().decode(found);
  };
  const read = {
    ...readPackage(bytes, { now: NOW }),
    findings: text('findings.json'),
    descriptor: text('datapackage.json'),
  };
  expect(read.refusals).toEqual([]);
  return verifyPackage({ ...read, sealed: sealedFolders(bytes) }, 'club', NOW);
}

describe('a package as it was written', () => {
  it('reads clean, its part and findings hold', () => {
    const checked = verified(packed(sealedBench()).files);
    expect(checked.map(({ outcome }) => outcome)).toEqual(['holds', 'holds', 'holds']);
    expect(checked[0]!.text).toMatch(/^club reads clean: \d+ rows/);
  });
});

describe('a package in which one digit of a reading was changed', () => {
  const { files } = packed(sealedBench());
  const reading = /\n([^,]+),[^\n]*conductor_mass[^\n]*/.exec(String(files.get('readings.csv')))!;
  const spoilt = reading[0].replace(
    /(conductor_mass,\d+\.\d)(\d)/,
    (_, head, digit) => `${head}${(Number(digit) + 5) % 10}`,
  );
  const change = (text: string | Uint8Array) => String(text).replace(reading[0], spoilt);

  it('fails first by its tables, names the row, goes on to the rest, and is not called clean', () => {
    expect(spoilt).not.toBe(reading[0]);
    const checked = verified(new Map(files).set('readings.csv', change(files.get('readings.csv')!)));
    expect(checked.map(({ outcome }) => outcome)).toEqual(['fails', 'holds', 'fails']);
    expect(checked[0]!.text).toMatch(
      /^The tables of club were changed after findings\.json was computed from them: rows of readings\.csv; otherwise than in a sealed part reads /,
    );
    expect(checked[0]!.text).toContain(`readings.csv ${reading[1]}.`);
    expect(checked[2]!.text).toMatch(/first difference is at x, .+ one changed reading moves figures of others too\.$/);
    expect(checked.map(({ text }) => text).join()).not.toContain('clean');
  });

  it('of the sealed rows is named too, beside whatever else fails', () => {
    const path = 'sealed/1/readings.csv';
    const checked = verified(new Map(files).set(path, change(files.get(path)!)).set('findings.json', '{"engine": 7'));
    expect(checked.map(({ outcome }) => outcome)).toEqual(['fails', 'fails']);
    expect(checked[0]!.text).toContain(
      `not those that were sealed. It holds no such row as: readings.csv ${reading[1]}.`,
    );
    expect(checked[1]!.text).toContain('cannot be read as findings');
  });

  it('is found by the hash of its table where there are no findings', () => {
    const bare = new Map(files).set('readings.csv', change(files.get('readings.csv')!));
    bare.delete('findings.json');
    expect(verified(bare)[0]).toMatchObject({
      outcome: 'fails',
      text: expect.stringContaining('after the package was written'),
    });
  });

  it('in the seals themselves is found as well', () => {
    const title = String(files.get('parts.csv')).replace('Ann', 'Bea');
    expect(verified(new Map(files).set('parts.csv', title))[0]!.text).toContain('rows of parts.csv');
  });
});

describe('a part that an earlier version sealed', () => {
  let earlier: ReturnType<typeof earlierFindings> | null = null;
  const b = sealedBench((row, bench) => {
    earlier = earlierFindings(bench, row);
    return { ...row, findings: earlier.hash, version: '0.0.9' };
  });
  const text = findingsText(earlier!.findings);
  const brought = new Map([[1, new Map([['findings.json', bytesOf(text)]])]]);

  it('travels with the findings that were sealed, and is not called changed', () => {
    const { files, sealed } = packed(b, brought);
    expect(sealed.otherwise).toEqual([]);
    expect(new TextDecoder().decode(files.get('sealed/1/findings.json') as Uint8Array)).toBe(text);
    const [, part] = verified(files);
    expect(part!.outcome).toBe('other version');
    expect(part!.text).toMatch(
      /^Part 1: rows and findings are as they were sealed, by both hashes\. This version of Cupel computes 3 places of the findings otherwise, first x, conductor_area\.value: sealed [\d.]+, computed [\d.]+ \(sealed by version 0\.0\.9, this is [\d.]+\)\. Nothing was changed since it was sealed\.$/,
    );
  });

  it('of which the sealed findings are known no more says so when it is written, and when it is verified', () => {
    const { files, sealed } = packed(b);
    expect(sealed.otherwise.map(({ part }) => part)).toEqual(['1']);
    const [, part] = verified(files);
    expect(part!.outcome).toBe('other version');
    expect(part!.text).toContain('not the text that was sealed, which is not in the package');
  });

  it('and whose findings were changed afterwards is called changed', () => {
    const { files } = packed(b, brought);
    const tampered = text.replace(/"value": 3/, '"value": 4');
    const checked = verified(new Map(files).set('sealed/1/findings.json', tampered));
    expect(checked[0]!.outcome).toBe('fails');
    expect(checked[0]!.text).toContain('are not those that were sealed');
  });

  it.each(['{}', '7', '{"engine":{}}', '{"cables":[]}', '{"engine": 7'])(
    'and whose findings are no findings any more, %s, is called unreadable',
    (nothing) => {
      const { files } = packed(b, brought);
      const checked = verified(new Map(files).set('sealed/1/findings.json', nothing));
      expect(checked[0]).toEqual({ outcome: 'fails', text: 'Part 1: its findings.json cannot be read.' });
    },
  );
});
