import { READINGS_ASKED } from '../../methods/jacket/wall.ts';
import type { Warning } from '../schema.ts';
import type { EnduranceTest, JacketCable } from '../shapes/jacket.ts';
import type { TestRead } from './readEndurance.ts';
import { usedText } from './testNotes.ts';

/** Pieces of one test farther apart than this do not compare, K: jackets soften with warmth. */
const ONE_TEMPERATURE = 3;

const warning = (code: string, cable: string | null, text: string): Warning => ({ code, cable, text });

function aboutWall(c: JacketCable): Warning[] {
  const list: Warning[] = [];
  if (c.wall_readings > 0 && c.wall_readings < READINGS_ASKED)
    list.push(
      warning(
        'wall-few-readings',
        c.cable,
        `The wall was read ${c.wall_readings} ${c.wall_readings === 1 ? 'time' : 'times'}: read six places round the face, the thinnest first, or its least place may have been missed.`,
      ),
    );
  if (c.cross_check && !c.cross_check.agrees) list.push(warning('wall-cross-check', c.cable, c.cross_check.text));
  if (c.wall_doubt !== '') list.push(warning('wall-doubtful', c.cable, c.wall_doubt));
  if (c.shares_doubt !== '') list.push(warning('section-overfull', c.cable, c.shares_doubt));
  return list;
}

/** A test as found and as read, with its pieces that were through others before. */
interface Tested {
  found: EnduranceTest;
  read: TestRead;
  used: readonly { test: string; pieces: readonly string[] }[];
}

function aboutTest({ found, read, used }: Tested, level: number): Warning[] {
  const list: Warning[] = used.map(({ test, pieces }) =>
    warning(
      'endurance-piece-used-before',
      null,
      `${found.test}: ${usedText(pieces, test, read.rows.length)} Take fresh pieces for each test.`,
    ),
  );
  const noted = read.rows.flatMap((r) => (r.temperature === null ? [] : [r.temperature]));
  const apart = noted.length > 1 ? Math.max(...noted) - Math.min(...noted) : 0;
  if (apart > ONE_TEMPERATURE)
    list.push(
      warning(
        'endurance-temperatures-apart',
        null,
        `${found.test}: the pieces were tested ${apart.toFixed(1)} °C apart. Jackets soften with warmth, so they do not compare.`,
      ),
    );
  if (found.equal_shapes && found.equal_shapes.p < 1 - level)
    list.push(
      warning(
        'endurance-shapes-differ',
        null,
        `${found.test}: the pieces of some cables scatter more than those of others. Equal cables are then said to differ more often than ${(100 * (1 - level)).toFixed(0)} times in 100; look at the single pieces before leaning on the order.`,
      ),
    );
  const alone = found.cables.filter((c) => c.n === 1);
  if (alone.length > 0)
    list.push(
      warning(
        'endurance-one-piece',
        null,
        `${found.test}: ${alone.map((c) => c.name).join(', ')} ${alone.length === 1 ? 'has' : 'have'} one piece. One piece says nothing of how pieces differ; take three or more.`,
      ),
    );
  return list;
}

/** Everything worth a warning about jackets. */
export function jacketWarnings(cables: readonly JacketCable[], tests: readonly Tested[], level: number): Warning[] {
  return [...cables.flatMap(aboutWall), ...tests.flatMap((test) => aboutTest(test, level))];
}
