import { installWhenNeeded } from './install.mjs';
import { nodeTooOld } from './nodeVersion.mjs';
import { stopWith } from './root.mjs';

/** Everything between a fresh checkout and a program that runs: the right Node.js, the packages, the built files. */
export async function setUp() {
  const tooOld = nodeTooOld();
  if (tooOld !== null) stopWith(tooOld);
  installWhenNeeded();
  const { buildWhenNeeded } = await import('./build.mjs');
  await buildWhenNeeded();
}
