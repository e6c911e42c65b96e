import { describe, expect, it } from 'vitest';
import { type MetalClaim, readMetalText } from '../../src/units/metalText.ts';

const READ: readonly (readonly [text: string, metal: MetalClaim['metal'], notTestable: string[]])[] = [
  ['', 'unsaid', []],
  ['  ', 'unsaid', []],
  ['OFC', 'copper', ['oxygen-free']],
  ['oxygen-free copper', 'copper', ['oxygen-free']],
  ['Oxygen\u2011Free', 'copper', ['oxygen-free']],
  ['OFHC', 'copper', ['oxygen-free']],
  ['copper', 'copper', []],
  ['Cu', 'copper', []],
  ['100 % copper', 'copper', []],
  ['99.9 %', 'copper', ['99.9 %']],
  ['99,9% copper', 'copper', ['99.9 %']],
  ['pure', 'copper', ['pure']],
  ['virgin copper', 'copper', ['virgin']],
  ['99.99% pure OFC', 'copper', ['oxygen-free', '99.99 %', 'pure']],
  ['100% OFC, not CCA', 'copper', ['oxygen-free']],
  ['CCA-free copper', 'copper', []],
  ['pure copper, no aluminium', 'copper', ['pure']],
  ['tinned copper', 'tinned copper', []],
  ['tinned OFC', 'tinned copper', ['oxygen-free']],
  ['TOFC', 'tinned copper', ['oxygen-free']],
  ['silver tinned OFC', 'tinned copper', ['oxygen-free']],
  ['silver tinned', 'tinned copper', []],
  ['tin-plated copper', 'tinned copper', []],
  ['CCA', 'copper-clad aluminium', []],
  ['CCAW', 'copper-clad aluminium', []],
  ['copper clad aluminum', 'copper-clad aluminium', []],
  ['Copper-Clad Aluminium', 'copper-clad aluminium', []],
  ['copper coated aluminum', 'copper-clad aluminium', []],
  ['tinned CCA', 'copper-clad aluminium', []],
  ['aluminum', 'aluminium', []],
  ['Al', 'aluminium', []],
  ['silver plated copper', 'copper', ['silver plating']],
  ['not CCA', 'unreadable', []],
  ['copper aluminium', 'unreadable', []],
  ['copper-clad steel', 'unreadable', []],
  ['alloy', 'unreadable', []],
  ['metal', 'unreadable', []],
];

describe('readMetalText', () => {
  it.each(READ)('"%s" → %s', (text, metal, notTestable) => {
    const claim = readMetalText(text);
    expect(claim).toMatchObject({ metal, notTestable });
    expect(claim.readAs).not.toBe('');
  });

  it('says what the tools cannot test', () => {
    expect(readMetalText('OFC').readAs).toBe('copper; not testable with these tools: oxygen-free');
  });

  it('keeps the words of what it cannot read', () => {
    expect(readMetalText('copper-clad steel').readAs).toContain('"copper-clad steel"');
  });
});
