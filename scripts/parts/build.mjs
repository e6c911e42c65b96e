import { existsSync, mkdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { stripVTControlCharacters } from 'node:util';
import { inProject, stopWith } from './root.mjs';
import { serviceWorker } from './serviceWorker.mjs';
import { sourceHash } from './sources.mjs';

const STAMP = inProject('dist', '.stamp');
const LOCK = inProject('dist', '.building');
/** A build takes seconds; a lock older than this was left by one that was killed. */
const STALE_LOCK_MS = 120_000;

/** Builds the command line with its server, and the page, unless what is in dist/ came from exactly these sources. */
export async function buildWhenNeeded({ force = false } = {}) {
  if (!force && isCurrent(sourceHash())) return;
  const trouble = await withLock(async () => {
    const hash = sourceHash();
    if (!force && isCurrent(hash)) return null;
    rmSync(STAMP, { force: true });
    rmSync(inProject('dist', 'chunks'), { recursive: true, force: true });
    const trouble = await build();
    if (trouble === null) writeFileSync(STAMP, hash);
    return trouble;
  });
  if (trouble) stopWith(`The build did not finish.\n${trouble}`);
}

/** Builds command line, page and service worker; answers null, or what stood in the way. */
async function build() {
  const vite = await import('vite');
  try {
    await vite.build(commandLine());
    await vite.build({ configFile: inProject('vite.config.ts'), logLevel: 'silent' });
    await vite.build(serviceWorker());
    return null;
  } catch (error) {
    return stripVTControlCharacters(error.message);
  }
}

function isCurrent(hash) {
  const wanted = [['cli.js'], ['page', 'index.html'], ['page', 'sw.js']].map((parts) => inProject('dist', ...parts));
  const built = existsSync(STAMP) && wanted.every((path) => existsSync(path));
  return built && readFileSync(STAMP, 'utf8') === hash;
}

/**
 * One file that starts fast, and chunks for what only some commands need. Everything is bundled except the database
 * driver, which finds its prebuilt binary beside itself.
 */
function commandLine() {
  return {
    configFile: false,
    root: inProject(),
    logLevel: 'silent',
    publicDir: false,
    ssr: { noExternal: true, external: ['libsql', 'pg', '@myriaddreamin/typst-ts-node-compiler', '@resvg/resvg-js'] },
    build: {
      ssr: true,
      target: 'node20',
      outDir: 'dist',
      emptyOutDir: false,
      rollupOptions: {
        input: { cli: inProject('src', 'edge', 'cli', 'main.ts') },
        output: { format: 'es', entryFileNames: '[name].js', chunkFileNames: 'chunks/[name].js' },
      },
    },
  };
}

async function withLock(work) {
  mkdirSync(inProject('dist'), { recursive: true });
  while (!taken()) await new Promise((resume) => setTimeout(resume, 100));
  try {
    return await work();
  } finally {
    rmSync(LOCK, { recursive: true, force: true });
  }
}

/** A folder is made or was there already, in one step, on every platform: so only one of two builders gets it. */
function taken() {
  try {
    mkdirSync(LOCK);
    return true;
  } catch (error) {
    if (error.code !== 'EEXIST') throw error;
    removeStaleLock();
    return false;
  }
}

function removeStaleLock() {
  try {
    if (Date.now() - statSync(LOCK).mtimeMs > STALE_LOCK_MS) rmSync(LOCK, { recursive: true, force: true });
  } catch {
    // The other builder has just finished and removed it.
  }
}
