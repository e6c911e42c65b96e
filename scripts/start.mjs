import { pathToFileURL } from 'node:url';
import { inProject } from './parts/root.mjs';
import { setUp } from './parts/setUp.mjs';

await setUp();
process.argv.splice(2, 0, 'bench');
await import(pathToFileURL(inProject('dist', 'cli.js')).href);
