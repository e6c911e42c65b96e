import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ShelfCable } from '../../findings/shapes/shelf.ts';
import { dataFolder } from '../store/place.ts';

/** Lines of one trial with the mark of what they rest on. */
export interface RememberedTrial {
  key: string;
  mark: string;
  cables: ShelfCable[];
}

/** Where lines are remembered between two runs of the program. Losing any of it costs only the time to compute it again. */
export interface Remembered {
  all(): Map<string, RememberedTrial>;
  add(line: RememberedTrial): void;
}

/** Nothing outlives the program. */
export const NOT_REMEMBERED: Remembered = { all: () => new Map(), add: () => {} };

/** Only the owner may read what is in it: it has the names of unpublished cables. */
const OWN_FILE = 0o600;
/** A file of which less than this share is of use is written anew. */
const OF_USE = 0.5;

/** The file beside the shelf in which lines are remembered. */
export const linesFile = (folder: string = dataFolder()): string => join(folder, 'shelf-lines.jsonl');

/** One JSON object on each line; of one key the last counts. What cannot be read or written is passed over. */
export function rememberedIn(file: string): Remembered {
  return {
    all() {
      const lines = textOf(file)
        .split('\n')
        .filter((line) => line !== '');
      const found = new Map(lines.flatMap(lineOf).map((line) => [line.key, line]));
      if (found.size < OF_USE * lines.length)
        attempt(() =>
          writeFileSync(file, [...found.values()].map((line) => `${JSON.stringify(line)}\n`).join(''), {
            mode: OWN_FILE,
          }),
        );
      return found;
    },
    add(line) {
      attempt(() => appendFileSync(file, `${JSON.stringify(line)}\n`, { mode: OWN_FILE }));
    },
  };
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    // None yet, or one that cannot be read.
    return '';
  }
}

function lineOf(text: string): RememberedTrial[] {
  try {
    const line = JSON.parse(text) as RememberedTrial;
    const whole = typeof line?.key === 'string' && typeof line.mark === 'string' && Array.isArray(line.cables);
    return whole ? [line] : [];
  } catch {
    return [];
  }
}

function attempt(act: () => void): void {
  try {
    act();
  } catch {
    // A full disk, or a folder that cannot be written: the lines are computed again next time.
  }
}
