import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { inProject } from './root.mjs';

const PAGE = inProject('dist', 'page');

/** How the service worker is built, once the page is: with the names of all its files and a hash over their content. */
export function serviceWorker() {
  const files = builtFiles();
  const hash = createHash('sha256');
  for (const file of files)
    hash
      .update(file)
      .update('\0')
      .update(readFileSync(join(PAGE, file)))
      .update('\0');
  // The HTML file is asked for as the place that it is.
  const addresses = files.map((file) => (file === 'index.html' ? '/' : `/${file.split(sep).join('/')}`));
  return {
    configFile: false,
    root: inProject(),
    logLevel: 'silent',
    publicDir: false,
    define: { SHELL_FILES: JSON.stringify(addresses), SHELL_HASH: JSON.stringify(hash.digest('hex').slice(0, 16)) },
    build: {
      target: 'es2022',
      outDir: PAGE,
      emptyOutDir: false,
      rollupOptions: {
        input: inProject('src', 'edge', 'page', 'serviceWorker.ts'),
        output: { format: 'iife', entryFileNames: 'sw.js' },
      },
    },
  };
}

function builtFiles() {
  return (
    readdirSync(PAGE, { recursive: true, withFileTypes: true })
      // Every browser that has service workers reads .woff2; the older form of each font need not be kept as well.
      .filter((item) => item.isFile() && item.name !== 'sw.js' && !item.name.endsWith('.woff'))
      .map((item) => relative(PAGE, join(item.parentPath ?? item.path, item.name)))
      .sort()
  );
}
