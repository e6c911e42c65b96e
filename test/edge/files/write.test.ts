import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeFolder } from '../../../src/edge/files/makeFolder.ts';
import { writeWholeFile } from '../../../src/edge/files/writeFile.ts';
import { writeFolder } from '../../../src/edge/files/writeFolder.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const top = tempFolder();
const OURS = ['cables.csv', 'fittings.csv'];
const files = new Map([['cables.csv', 'new']]);

describe('writing a folder', () => {
  it('makes it, or fills an empty one', () => {
    writeFolder(join(top, 'a'), files, OURS, false);
    mkdirSync(join(top, 'empty'));
    writeFolder(join(top, 'empty'), files, OURS, false);
    expect(readFileSync(join(top, 'a', 'cables.csv'), 'utf8')).toBe('new');
    expect(readdirSync(join(top, 'empty'))).toEqual(['cables.csv']);
  });

  it('leaves a folder that holds anything alone, unless told to replace', () => {
    const folder = join(top, 'full');
    mkdirSync(folder);
    for (const name of ['cables.csv', 'fittings.csv', 'photo.jpg']) writeFileSync(join(folder, name), 'old');
    expect(() => writeFolder(folder, files, OURS, false)).toThrow(/full is not empty; add --replace/);
    expect(readFileSync(join(folder, 'cables.csv'), 'utf8')).toBe('old');
    writeFolder(folder, files, OURS, true);
    expect(readdirSync(folder).sort()).toEqual(['cables.csv', 'photo.jpg']);
    expect(readFileSync(join(folder, 'cables.csv'), 'utf8')).toBe('new');
  });

  it('does not take a file for a folder', () => {
    writeFileSync(join(top, 'file'), '');
    expect(() => writeFolder(join(top, 'file'), files, OURS, true)).toThrow(/is a file; name a folder/);
    expect(() => writeFolder(join(top, 'file', 'under'), files, OURS, true)).toThrow(
      /the folder .*file is not a folder;/,
    );
  });

  it('makes no folders above it', () => {
    expect(() => writeFolder(join(top, 'no', 'such'), files, OURS, true)).toThrow(
      /^Nothing was written: the folder .*no is not there; make it first, or name another place\.$/,
    );
    expect(existsSync(join(top, 'no'))).toBe(false);
  });
});

describe('writing one file', () => {
  it('keeps the old one unless told to replace, and leaves no part behind', () => {
    const folder = join(top, 'one');
    mkdirSync(folder);
    const path = join(folder, 'trial.zip');
    writeWholeFile(path, 'first', false);
    expect(() => writeWholeFile(path, 'second', false)).toThrow(/is there already; add --replace/);
    writeWholeFile(path, 'third', true);
    expect(readFileSync(path, 'utf8')).toBe('third');
    expect(readdirSync(folder)).toEqual(['trial.zip']);
  });

  it('makes no folders for it', () => {
    expect(() => writeWholeFile(join(top, 'nor', 'this', 'trial.zip'), 'x', false)).toThrow(
      /this is not there; make it/,
    );
    expect(existsSync(join(top, 'nor'))).toBe(false);
  });
});

describe('making a folder', () => {
  it('makes those above it too, and leaves one that is there', () => {
    makeFolder(join(top, 'deep', 'deeper', 'deepest'));
    makeFolder(join(top, 'deep', 'deeper'));
    expect(existsSync(join(top, 'deep', 'deeper', 'deepest'))).toBe(true);
  });

  it('is not done under a file, nor in its place', () => {
    writeFileSync(join(top, 'letter'), '');
    expect(() => makeFolder(join(top, 'letter'))).toThrow(/cannot be made: there is a file of that name\.$/);
    expect(() => makeFolder(join(top, 'letter', 'in', 'it'))).toThrow(/letter cannot be made: there is a file/);
  });

  // Root may write everywhere.
  it.skipIf(process.platform === 'win32' || process.getuid?.() === 0)('is not done where one may not write', () => {
    mkdirSync(join(top, 'locked'));
    chmodSync(join(top, 'locked'), 0o500);
    expect(() => makeFolder(join(top, 'locked', 'in'))).toThrow(/cannot be made: you may not write in .*locked\.$/);
  });

  it.runIf(process.platform === 'linux')('comes to an end where a folder takes nothing in', () => {
    expect(() => makeFolder('/proc/cupel/shelf')).toThrow(
      'The folder /proc/cupel cannot be made: /proc takes no folders.',
    );
  });
});
