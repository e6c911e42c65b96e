import type { EnduranceTest, Jacket } from '../../findings/shapes/jacket.ts';
import { numberWord } from '../../units/numberWords.ts';
import { andList } from '../words/andList.ts';

/**
 * What the place says first: how thick the walls are, and how far the tests part the cables. The single orders stand with their tests.
 */
export function jacketHeading(jacket: Jacket): string {
  const walls = jacket.sentence.match(/^(?:Walls run|The walls are alike)[^.]*(?:\.\d[^.]*)*\./)?.[0] ?? '';
  const [only] = jacket.cables;
  const one = walls === '' && jacket.cables.length === 1 ? only!.sentence : '';
  const tests = testsSentence(jacket.endurance);
  const doubted = jacket.cables
    .filter((c) => c.wall_doubt !== '' && c.role === 'compared')
    .map((c) => c.name || c.cable);
  const held =
    doubted.length === 0 || one !== ''
      ? ''
      : `The ${doubted.length === 1 ? 'wall' : 'walls'} of ${andList(doubted)} ${doubted.length === 1 ? 'is' : 'are'} held back until a reading is checked.`;
  const first = [walls || one, held, tests].filter(Boolean).join(' ');
  return first || jacket.sentence || 'Jackets were read; a second cable gives something to compare.';
}

/** `Scrape parts seven of 15 pairs of cables, sandpaper one of 15.` */
function testsSentence(tests: readonly EnduranceTest[]): string {
  const paired = tests.filter((t) => t.pairs.length > 0);
  if (paired.length === 0) return '';
  const parts = paired.map(({ test, pairs }, i) => {
    const parted = pairs.filter((p) => p.parted).length;
    if (i === 0 && pairs.length === 1)
      return `The ${test} test ${parted === 1 ? 'parts' : 'does not part'} the two cables`;
    const of = `${numberWord(parted)} of ${numberWord(pairs.length)}${i === 0 ? ' pairs of cables' : ''}`;
    return i === 0 ? `The ${test} test parts ${of}` : `${test} ${of}`;
  });
  return `${andList(parts)}.`;
}
