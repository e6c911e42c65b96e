import { existsSync, readFileSync } from 'node:fs';

/**
 * How many tests passed and failed, from the runner's own record. A run that broke without a failed test (a file that
 * would not load, an error between tests) counts as failed once for each such file, and at least once.
 */
export function countTests(recordPath, runnerStatus) {
  if (!existsSync(recordPath)) return { passed: 0, failed: 1 };
  const record = JSON.parse(readFileSync(recordPath, 'utf8'));
  const brokenFiles = record.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.every(notFailed),
  );
  const failed = record.numFailedTests + brokenFiles.length;
  return { passed: record.numPassedTests, failed: runnerStatus === 0 ? failed : Math.max(1, failed) };
}

function notFailed(test) {
  return test.status !== 'failed';
}
