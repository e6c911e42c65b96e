import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readBytes } from '../../../src/edge/files/readBytes.ts';
import { readFolder } from '../../../src/edge/files/readFolder.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const top = tempFolder();
let count = 0;
function folderWith(files: Record<string, string>): string {
  const folder = join(top, `package ${count++}`);
  mkdirSync(folder);
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(folder, name, '..'), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}
const SMALL = { fileBytes: 10, totalBytes: 15, files: 4, photoBytes: 100 };

describe('a package folder', () => {
  it('gives its tables and leaves the rest alone', () => {
    const folder = folderWith({ 'cables.csv': 'a', 'DATAPACKAGE.JSON': '{}', 'photos/1.jpg': 'x', 'README.md': 'r' });
    const files = readFolder(folder);
    expect([...files.keys()]).toEqual(['DATAPACKAGE.JSON', 'cables.csv']);
    expect(new TextDecoder().decode(files.get('cables.csv'))).toBe('a');
  });

  it('may be wrapped in another folder', () => {
    expect([...readFolder(folderWith({ 'trial/cables.csv': 'a', '.DS_Store': '' })).keys()]).toEqual(['cables.csv']);
  });

  it('may be empty: what that means is said by whoever reads the tables', () => {
    expect(readFolder(folderWith({})).size).toBe(0);
  });

  it('may itself be reached through a link', () => {
    const link = join(top, 'link to package');
    symlinkSync(folderWith({ 'cables.csv': 'a' }), link, 'junction');
    expect(readFolder(link).size).toBe(1);
  });

  it('is refused when it is not there', () => {
    expect(() => readFolder(join(top, 'gone'))).toThrow(/gone is not there\.$/);
  });

  it.skipIf(process.platform === 'win32')('is refused when a link leads out of it', () => {
    const outside = folderWith({ 'secret.csv': 's' });
    const folder = folderWith({ 'cables.csv': 'a' });
    symlinkSync(join(outside, 'secret.csv'), join(folder, 'readings.csv'));
    expect(() => readFolder(folder)).toThrow(
      'readings.csv is a link that leads out of the folder; put the file itself there.',
    );
  });

  it.skipIf(process.platform === 'win32')('is refused when a folder beside it begins with the same name', () => {
    const folder = folderWith({ 'cables.csv': 'a' });
    const twin = `${folder} twin`;
    mkdirSync(twin);
    writeFileSync(join(twin, 'x.csv'), 'x');
    symlinkSync(join(twin, 'x.csv'), join(folder, 'x.csv'));
    expect(() => readFolder(folder)).toThrow(/leads out of the folder/);
  });

  it.skipIf(process.platform === 'win32')('is refused when a link leads nowhere or round', () => {
    const folder = folderWith({});
    symlinkSync(join(folder, 'gone'), join(folder, 'a.csv'));
    expect(() => readFolder(folder)).toThrow('a.csv is not there.');
  });

  it('is refused for one large file, before it is read', () => {
    expect(() => readFolder(folderWith({ 'readings.csv': 'x'.repeat(11) }), SMALL)).toThrow(
      /^readings\.csv has 1 kB, at most/,
    );
    expect(readFolder(folderWith({ 'readings.csv': 'x'.repeat(10) }), SMALL).size).toBe(1);
  });

  it('is refused for too much in all, and for too many files', () => {
    expect(() => readFolder(folderWith({ 'a.csv': 'x'.repeat(8), 'b.csv': 'x'.repeat(8) }), SMALL)).toThrow(
      /together have more/,
    );
    const many = Object.fromEntries([1, 2, 3, 4, 5].map((n) => [`${n}.csv`, '']));
    expect(() => readFolder(folderWith(many), SMALL)).toThrow(/holds 5 files, at most 4/);
  });

  it('leaves a folder that is named like a table alone', () => {
    expect(readFolder(folderWith({ 'cables.csv': 'a', 'old.csv/x.txt': '' })).size).toBe(1);
  });
});

describe('one file', () => {
  it('is read, or refused by size or for being none', () => {
    const folder = folderWith({ 'a.zip': 'x'.repeat(10), 'b.zip': 'x'.repeat(11) });
    expect(readBytes(join(folder, 'a.zip'), SMALL)).toHaveLength(10);
    expect(() => readBytes(join(folder, 'b.zip'), SMALL)).toThrow(/b\.zip has 1 kB/);
    expect(() => readBytes(folder, SMALL)).toThrow(/is not a file\.$/);
    expect(() => readBytes(join(folder, 'c.zip'), SMALL)).toThrow(/c\.zip is not there\.$/);
  });
});
