import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { PROJECT_ROOT } from './support/sourceFiles.ts';
import { tempFolder } from './support/tempFolder.ts';

/** The set-up scripts are plain JavaScript, so that they run before anything is installed. */
const part = (name: string) =>
  import(/* @vite-ignore */ pathToFileURL(join(PROJECT_ROOT, 'scripts', 'parts', name)).href);
const folder = tempFolder();

describe('which Node.js', async () => {
  const { nodeTooOld } = (await part('nodeVersion.mjs')) as { nodeTooOld: (version: string) => string | null };

  it.each(['20.19.0', '20.20.2', '22.0.0', '24.1.0'])('%s is new enough', (version) => {
    expect(nodeTooOld(version)).toBeNull();
  });

  it.each(['18.20.8', '20.18.9', '8.0.0'])('%s is too old, and one sentence says so', (version) => {
    expect(nodeTooOld(version)).toBe(
      `Cupel needs Node.js 20.19 or newer and this is ${version}: install a newer one from nodejs.org and try again.`,
    );
  });

  it('is what package.json says', () => {
    const { engines } = JSON.parse(readFileSync(join(PROJECT_ROOT, 'package.json'), 'utf8')) as {
      engines: { node: string };
    };
    expect(engines.node).toBe('>=20.19');
  });
});

describe('where Chromium is', async () => {
  const { findChromium } = (await part('chromium.mjs')) as {
    findChromium: (env: Record<string, string>, platform: string) => string | null;
  };
  const chromium = join(folder, 'chromium');
  writeFileSync(chromium, '');
  chmodSync(chromium, 0o755);

  it('is where CHROME_PATH says', () => {
    expect(findChromium({ CHROME_PATH: chromium }, 'linux')).toBe(chromium);
  });

  it('is on the search path, even in a folder with spaces', () => {
    const found = findChromium({ PATH: ['nowhere', folder].join(delimiter) }, 'linux');
    expect([chromium, '/usr/bin/chromium']).toContain(found);
  });

  it('is in the usual place on Windows', () => {
    const installed = join(folder, 'Google', 'Chrome', 'Application');
    mkdirSync(installed, { recursive: true });
    writeFileSync(join(installed, 'chrome.exe'), '');
    const found = findChromium({ PROGRAMFILES: folder }, 'win32');
    expect([join(installed, 'chrome.exe'), '/usr/bin/chromium']).toContain(found);
  });
});

describe('what the tests need and do not find', async () => {
  const { whatIsMissing } = (await part('whatIsMissing.mjs')) as {
    whatIsMissing: (
      found: { chromium: string | null; postgres: string | null },
      env: Record<string, string>,
    ) => { failed: number; sentence: string }[];
  };

  it('is nothing where all is there', () => {
    expect(whatIsMissing({ chromium: '/a', postgres: '/b' }, {})).toEqual([]);
  });

  it('is told in one sentence each, and a page that is not tested counts as one failed', () => {
    const missing = whatIsMissing({ chromium: null, postgres: null }, {});
    expect(missing.map(({ failed }) => failed)).toEqual([1, 0]);
    for (const { sentence } of missing) expect(sentence).toMatch(/^[^.]+ was not found, so [^.]+\.$/);
    expect(missing[1]!.sentence).toContain('is not tested');
  });

  it('is said to fail where a build machine runs the tests', () => {
    expect(whatIsMissing({ chromium: '/a', postgres: null }, { CI: 'true' })[0]!.sentence).toContain('database fail:');
  });
});

describe('how many tests passed', async () => {
  const { countTests } = (await part('testCount.mjs')) as {
    countTests: (record: string, status: number) => { passed: number; failed: number };
  };
  let records = 0;
  function count(record: object | null, status: number) {
    const path = join(folder, `record ${records++}.json`);
    if (record !== null) writeFileSync(path, JSON.stringify(record));
    return countTests(path, status);
  }
  const file = (status: string, ...tests: string[]) => ({
    status,
    assertionResults: tests.map((one) => ({ status: one })),
  });

  it('is what the runner recorded', () => {
    const record = { numPassedTests: 2, numFailedTests: 0, testResults: [file('passed', 'passed', 'passed')] };
    expect(count(record, 0)).toEqual({ passed: 2, failed: 0 });
  });

  it('counts a failed test once', () => {
    const record = { numPassedTests: 1, numFailedTests: 1, testResults: [file('failed', 'passed', 'failed')] };
    expect(count(record, 1)).toEqual({ passed: 1, failed: 1 });
  });

  it('counts a file that would not load', () => {
    const record = { numPassedTests: 1, numFailedTests: 0, testResults: [file('passed', 'passed'), file('failed')] };
    expect(count(record, 1)).toEqual({ passed: 1, failed: 1 });
  });

  it('counts a run that broke between tests, and one that left no record', () => {
    const record = { numPassedTests: 1, numFailedTests: 0, testResults: [file('passed', 'passed')] };
    expect(count(record, 1)).toEqual({ passed: 1, failed: 1 });
    expect(count(null, 1)).toEqual({ passed: 0, failed: 1 });
  });
});
