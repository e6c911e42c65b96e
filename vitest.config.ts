import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** Drives of the page that take minutes: run with CUPEL_TESTS=all. What they drive is held to tests of its own in the rooms. */
const LONG = ['amps', 'bend', 'benchSlips', 'jacket', 'looks', 'notices', 'plan', 'publish', 'standing'].map(
  (place) => `test/browser/${place}.test.ts`,
);

/** Three projects: `unit` mirrors src/, `outside` holds published values, `browser` drives a real Chromium. */
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
        },
      },
      { test: { name: 'outside', include: ['test/outside/**/*.test.ts'], testTimeout: 60_000 } },
      {
        test: {
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          exclude: process.env.CUPEL_TESTS === 'all' ? [] : LONG,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // Two browsers on two cores: a machine that is busy otherwise may keep one waiting.
          retry: 2,
        },
      },
    ],
  },
});
