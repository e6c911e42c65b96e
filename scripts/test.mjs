/**
 * Everything that must hold: style, types, and every test (the page's in a real Chromium). The last line alone is
 * `N passed, N failed`; a failed style or type check counts as one failed, and so does a page that could not be tested.
 */
import { rmSync } from 'node:fs';
import { findOrInstallChromium } from './parts/chromium.mjs';
import { findOrInstallPostgres } from './parts/postgres.mjs';
import { inProject } from './parts/root.mjs';
import { runNode } from './parts/run.mjs';
import { setUp } from './parts/setUp.mjs';
import { countTests } from './parts/testCount.mjs';
import { whatIsMissing } from './parts/whatIsMissing.mjs';

await setUp();
const chromium = findOrInstallChromium();
const missing = whatIsMissing({ chromium, postgres: findOrInstallPostgres() });
const tellMissing = () => {
  for (const { sentence } of missing) process.stderr.write(`${sentence}\n`);
};
tellMissing();

const packages = (...parts) => inProject('node_modules', ...parts);
const checks = [
  { name: 'style', status: runNode(packages('@biomejs', 'biome', 'bin', 'biome'), ['check', '.']) },
  { name: 'types', status: runNode(packages('typescript', 'bin', 'tsc'), ['--noEmit']) },
];

const withoutPage = chromium === null ? ['--project', 'unit', '--project', 'outside'] : [];
const record = inProject('dist', '.test-results.json');
rmSync(record, { force: true });
const runner = runNode(
  packages('vitest', 'vitest.mjs'),
  [
    'run',
    ...withoutPage,
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${record}`,
    ...process.argv.slice(2),
  ],
  { env: chromium === null ? {} : { CHROME_PATH: chromium } },
);

const broken = checks.filter((check) => check.status !== 0);
for (const check of broken) process.stdout.write(`The ${check.name} check found something: see above.\n`);
const { passed, failed } = countTests(record, runner);
const allFailed = failed + broken.length + missing.reduce((sum, one) => sum + one.failed, 0);
// Said again, where it is still on the screen.
tellMissing();
process.stdout.write(`${passed} passed, ${allFailed} failed\n`);
process.exitCode = allFailed === 0 ? 0 : 1;
