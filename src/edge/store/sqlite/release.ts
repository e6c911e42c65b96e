import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/**
 * Lets go of the files of databases that were closed. The driver keeps them open until the statements made on them have
 * been collected as garbage, and until then they can neither be moved on Windows nor be locked as a whole.
 */
export async function releaseClosed(): Promise<void> {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  for (let round = 0; round < 2; round += 1) {
    collect();
    // What the driver does when an object goes runs after the collection, in a turn of its own.
    await new Promise((resume) => setImmediate(resume));
  }
}
