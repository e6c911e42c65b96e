import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tagsOf } from '../report/markup.ts';
import { PICTURES } from './pictures.ts';

/** One element a line, so that a change can be read. */
const readable = (content: string): string =>
  content.startsWith('<svg') ? `${content.replaceAll('><', '>\n<')}\n` : content;

describe('the gallery', () => {
  it.each(Object.keys(PICTURES))('%s is as committed', async (file) => {
    const content = PICTURES[file]!();
    if (file.endsWith('.svg')) expect(tagsOf(content)[0]!.name).toBe('svg');
    await expect(readable(content)).toMatchFileSnapshot(`./${file}`);
  });

  it('holds no picture that nothing makes', () => {
    const committed = readdirSync(new URL('.', import.meta.url)).filter((file) => /\.(svg|txt)$/.test(file));
    expect(committed.sort()).toEqual(Object.keys(PICTURES).sort());
  });
});
