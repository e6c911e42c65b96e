import { readFileSync, statSync } from 'node:fs';
import { FileRefusal, fileTrouble } from './fileRefusal.ts';
import { type FileLimits, sizeWords, USUAL_LIMITS } from './limits.ts';

/** Reads one file, after a look at its size. Throws FileRefusal with a sentence. */
export function readBytes(path: string, limits: FileLimits = USUAL_LIMITS): Uint8Array {
  try {
    const about = statSync(path);
    if (!about.isFile()) throw new FileRefusal(`${path} is not a file.`);
    if (about.size > limits.fileBytes)
      throw new FileRefusal(`${path} has ${sizeWords(about.size)}, at most ${sizeWords(limits.fileBytes)} are read.`);
    return new Uint8Array(readFileSync(path));
  } catch (error) {
    throw fileTrouble(path, error);
  }
}
