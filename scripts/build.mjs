import { buildWhenNeeded } from './parts/build.mjs';

await buildWhenNeeded({ force: process.argv.includes('--force') });
