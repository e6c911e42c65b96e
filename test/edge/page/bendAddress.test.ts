import { describe, expect, it } from 'vitest';
import { bendOpened, openedText } from '../../../src/edge/page/store/bend/bendAddress.ts';

describe('what stands open in Bend', () => {
  it.each([
    [null, { what: 'nothing' }],
    ['', { what: 'nothing' }],
    ['judge', { what: 'judge' }],
    ['photo:n-1', { what: 'photo', note: 'n-1' }],
    ['harrow-sedge', { what: 'cable', cable: 'harrow-sedge' }],
    ['cable:judge', { what: 'cable', cable: 'judge' }],
  ] as const)('%s is %j', (opened, means) => {
    expect(bendOpened(opened)).toEqual(means);
  });

  it.each(['harrow', 'judge', 'photo:x', 'cable:x', 'Käbel #1'])('leads back to a cable called %s', (cable) => {
    expect(bendOpened(openedText({ what: 'cable', cable }))).toEqual({ what: 'cable', cable });
  });
});
