import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/**
 * The web page: its source in src/edge/page, built into dist/page, which the server hands out as it stands.
 * While the page is being worked on, `vite` serves it and passes /api on to a running bench (port from CUPEL_PORT).
 */
export default defineConfig({
  root: here('./src/edge/page'),
  base: '/',
  publicDir: false,
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  worker: { format: 'es' },
  build: {
    outDir: here('./dist/page'),
    emptyOutDir: true,
    target: 'es2022',
    // Inlined fonts would need a wider content security policy than the server gives.
    assetsInlineLimit: 0,
  },
  server: { proxy: { '/api': `http://127.0.0.1:${process.env.CUPEL_PORT ?? '4870'}` } },
});
