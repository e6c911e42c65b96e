import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeWholeFile } from '../../../src/edge/files/writeFile.ts';
import { writeFolder } from '../../../src/edge/files/writeFolder.ts';
import { tempFolder } from '../../support/tempFolder.ts';

const top = tempFolder();
const OURS = ['cables.csv', 'fittings.csv'];
const files = new Map([['cables.csv', 'new']]);

describe('writing a folder', () => {
  it('makes it, or fills an empty one', () => {
    writeFolder(join(top, 'a', 'b'), files, OURS, false);
    mkdirSync(join(top, 'empty'));
    writeFolder(join(top, 'empty'), files, OURS, false);
    expect(readFileSync(join(top, 'a', 'b', 'cables.csv'), 'utf8')).toBe('new');
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
    expect(() => writeFolder(join(top, 'file', 'under'), files, OURS, true)).toThrow(/not a folder|is there|could not/);
  });
});

describe('writing one file', () => {
  it('keeps the old one unless told to replace, and leaves no part behind', () => {
    const folder = join(top, 'one');
    const path = join(folder, 'trial.zip');
    writeWholeFile(path, 'first', false);
    expect(() => writeWholeFile(path, 'second', false)).toThrow(/is there already; add --replace/);
    writeWholeFile(path, 'third', true);
    expect(readFileSync(path, 'utf8')).toBe('third');
    expect(readdirSync(folder)).toEqual(['trial.zip']);
  });
});
