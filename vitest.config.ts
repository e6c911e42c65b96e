import { defineConfig } from 'vitest/config';

/** Three projects: `unit` mirrors src/, `outside` holds published values, `browser` drives a real Chromium. */
export default defineConfig({
  test: {
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
          testTimeout: 120_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
