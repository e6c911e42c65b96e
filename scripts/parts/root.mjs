import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Root folder of the project. */
export const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** A path inside the project. */
export const inProject = (...parts) => join(ROOT, ...parts);

/** Says one sentence on stderr and ends the process. */
export function stopWith(sentence) {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}
