import { describe, expect, it } from 'vitest';
import { restoredWords } from '../../../src/edge/cli/restoredWords.ts';
import type { Restored } from '../../../src/edge/store/backup/restored.ts';

const held = { takenAt: '', trials: 2, entries: 40, blobs: 1, digest: '' };
const plain: Restored = { backup: held, held, sealed: true, salvaged: null, aside: null };
const salvaged = { entries: 0, blobs: 0, lost: [], lostBlobs: 0, unreadable: null };

describe('what came of a restore, in words', () => {
  it.each<[string, Partial<Restored>, string[]]>([
    ['a backup alone', {}, ['The shelf holds 2 trials with 40 entries and 1 photo or log, as they were backed up.']],
    [
      'a copy by hand, beside a shelf that held nothing more',
      { sealed: false, salvaged, aside: '/x' },
      [
        'The shelf holds 2 trials with 40 entries and 1 photo or log; the file has no seal, so only its structure was checked.',
        'What was there before is kept in /x.',
      ],
    ],
    [
      'a backup, and what came after it',
      {
        held: { ...held, entries: 43, blobs: 2 },
        salvaged: { ...salvaged, entries: 3, blobs: 1, lost: [{ trial: 'fen', numbers: [41] }], lostBlobs: 2 },
      },
      [
        'The backup holds 2 trials with 40 entries and 1 photo or log, as they were backed up.',
        'Added from the shelf that was there: 3 entries and 1 photo or log that the backup did not hold.',
        'Beyond reading in trial "fen": entry 41. A device that still holds it sends it again.',
        'Beyond reading: 2 photos or logs.',
        'The shelf holds 2 trials with 43 entries and 2 photos or logs.',
      ],
    ],
    [
      'no backup at all',
      {
        backup: null,
        sealed: false,
        salvaged: {
          ...salvaged,
          entries: 40,
          unreadable: 'it is not a database',
          lost: [{ trial: 'fen', numbers: [3, 4, 5] }],
        },
      },
      [
        'Read from the shelf that was there: 40 entries.',
        'Not all of the shelf that was there could be read (it is not a database).',
        'Beyond reading in trial "fen": entries 3 to 5. Devices that still hold them send them again.',
        'The shelf holds 2 trials with 40 entries and 1 photo or log.',
      ],
    ],
  ])('%s', (_what, restored, lines) => {
    expect(restoredWords({ ...plain, ...restored }).split('\n')).toEqual([...lines, '']);
  });
});
