import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** A fresh folder with spaces in its name, removed when the test file is done. */
export function tempFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'cupel test '));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
