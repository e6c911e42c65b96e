import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/**
 * Drives that look once more at what others drive, for every width and scheme, and those of the longest logs: run with
 * CUPEL_TESTS=all, so that the usual run stays short on two cores.
 */
const LONG = ['access', 'benchAccess', 'planAccess', 'looks', 'amps'].map((name) => `test/browser/${name}.test.ts`);

/**
 * Three projects: `unit` mirrors src/, `outside` holds published values, `browser` drives a real Chromium.
 *
 * A worker keeps what it has read from one file to the next, within one project at a time: a test file that replaces a module
 * or sets anything that is not its own puts it back.
 */
export default defineConfig({
  test: {
    // One for each core even where there are two: left to itself the runner would keep one back.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    projects: [
      {
        test: {
          name: 'unit',
          include: ['test/**/*.test.ts'],
          exclude: ['test/outside/**', 'test/browser/**'],
          testTimeout: 60_000,
          isolate: false,
          sequence: { groupOrder: 0 },
        },
      },
      {
        test: {
          name: 'outside',
          include: ['test/outside/**/*.test.ts'],
          testTimeout: 60_000,
          isolate: false,
          sequence: { groupOrder: 1 },
        },
      },
      {
        test: {
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          exclude: process.env.CUPEL_TESTS === 'all' ? [] : LONG,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // Two browsers on two cores: a machine that is busy otherwise may keep one waiting once.
          retry: 1,
          globalSetup: 'test/browser/support/buildPage.ts',
          // One Chromium for each worker; every test opens a context of its own.
          isolate: false,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
