import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { projectRoot } from '../../../src/edge/files/projectRoot.ts';

/** Builds the page once for all drives of it, when its sources changed. */
export default function buildPage(): void {
  execFileSync(process.execPath, [join(projectRoot(), 'scripts', 'build.mjs')], { stdio: 'inherit' });
}
