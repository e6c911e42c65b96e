/**
 * Everything that must hold: style, types, and every test (the page's in a real Chromium). The last line alone is
 * `N passed, N failed`; a failed style or type check counts as one failed.
 */
import { rmSync } from 'node:fs';
import { findOrInstallChromium } from './parts/chromium.mjs';
import { findOrInstallPostgres } from './parts/postgres.mjs';
import { inProject, stopWith } from './parts/root.mjs';
import { runNode } from './parts/run.mjs';
import { setUp } from './parts/setUp.mjs';
import { countTests } from './parts/testCount.mjs';

await setUp();
const chromium = findOrInstallChromium();
if (chromium === null)
  stopWith(
    'The page is tested in Chromium and none was found: install it, or set CHROME_PATH to where it is, and run the tests again.',
  );
if (findOrInstallPostgres() === null)
  process.stderr.write(
    'PostgreSQL was not found: the shelf in a database is not tested here. Install it to test that too.\n',
  );

const packages = (...parts) => inProject('node_modules', ...parts);
const checks = [
  { name: 'style', status: runNode(packages('@biomejs', 'biome', 'bin', 'biome'), ['check', '.']) },
  { name: 'types', status: runNode(packages('typescript', 'bin', 'tsc'), ['--noEmit']) },
];

const record = inProject('dist', '.test-results.json');
rmSync(record, { force: true });
const runner = runNode(
  packages('vitest', 'vitest.mjs'),
  ['run', '--reporter=default', '--reporter=json', `--outputFile.json=${record}`, ...process.argv.slice(2)],
  { env: { CHROME_PATH: chromium } },
);

const broken = checks.filter((check) => check.status !== 0);
for (const check of broken) process.stdout.write(`The ${check.name} check found something: see above.\n`);
const { passed, failed } = countTests(record, runner);
const allFailed = failed + broken.length;
process.stdout.write(`${passed} passed, ${allFailed} failed\n`);
process.exitCode = allFailed === 0 ? 0 : 1;
