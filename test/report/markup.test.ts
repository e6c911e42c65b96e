import { describe, expect, it } from 'vitest';
import { tagsOf } from './markup.ts';

describe('the strict reader of markup', () => {
  it('reads elements, attributes and text', () => {
    expect(tagsOf('<g fill="a"><text>b &amp; c</text><path/></g>').map((tag) => tag.name)).toEqual([
      'g',
      'text',
      'path',
    ]);
  });

  it.each([
    '<g>',
    '<g></text>',
    '<g a="1" a="2"/>',
    '<g>a & b</g>',
    '<g a="<"/>',
    'text',
    '<g/>x',
    '<script src=x></script>',
  ])('refuses %s', (broken) => {
    expect(() => tagsOf(broken)).toThrow();
  });
});
