/** Bundles one TypeScript file for Node into a throw-away folder and runs it: Node 20 cannot run TypeScript itself. */
import { mkdtemp, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

export const root = resolve(import.meta.dirname, '..');

/** The exports of `file` (a path from the top of the repository). */
export async function importTypescript(file) {
  const outDir = await mkdtemp(join(root, 'node_modules', '.run-'));
  try {
    await build({
      root,
      configFile: false,
      logLevel: 'error',
      publicDir: false,
      ssr: { noExternal: true, external: ['libsql', 'pg'] },
      build: {
        ssr: join(root, file),
        outDir,
        minify: false,
        target: 'node20',
        rollupOptions: { output: { entryFileNames: 'main.mjs' } },
      },
    });
    return await import(pathToFileURL(join(outDir, 'main.mjs')).href);
  } finally {
    await rm(outDir, { recursive: true, force: true });
  }
}
