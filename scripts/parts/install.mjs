import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { inProject, ROOT, stopWith } from './root.mjs';
import { runNode } from './run.mjs';

const STAMP = inProject('node_modules', '.cupel-stamp');

/** Installs what package-lock.json lists, unless exactly that is installed already. */
export function installWhenNeeded() {
  const wanted = stampText();
  if (installedStamp() === wanted) return;
  if (!installedByHand()) {
    process.stderr.write('Installing what Cupel is built from (once) …\n');
    if (npmInstall() !== 0)
      stopWith('The installation did not finish: see the lines above; a network connection is needed the first time.');
  }
  writeFileSync(STAMP, wanted);
}

/** The lockfile, and what a prebuilt binary depends on: copying node_modules to another kind of machine must not be trusted. */
function stampText() {
  const lock = createHash('sha256')
    .update(readFileSync(inProject('package-lock.json')))
    .digest('hex');
  return `${lock} ${process.platform} ${process.arch}\n`;
}

function installedStamp() {
  return existsSync(STAMP) ? readFileSync(STAMP, 'utf8') : null;
}

/** npm may write the lockfile a moment after its own record of what it installed. */
const MOMENT_MS = 60_000;

/** True when somebody ran npm by hand since: its own record is then newer than the lockfile and than our stamp. */
function installedByHand() {
  const record = inProject('node_modules', '.package-lock.json');
  if (!existsSync(record) || !existsSync(inProject('node_modules', 'vite'))) return false;
  const recorded = statSync(record).mtimeMs;
  const sinceStamp = !existsSync(STAMP) || recorded > statSync(STAMP).mtimeMs;
  return sinceStamp && recorded + MOMENT_MS >= statSync(inProject('package-lock.json')).mtimeMs;
}

function npmInstall() {
  // Development packages are what builds the page; NODE_ENV=production alone would leave them out.
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  const script = npmScript();
  if (script !== null) return runNode(script, args);
  // The arguments hold no spaces and no user text, so that the shell which Windows needs for npm.cmd has nothing to misread.
  const shell = process.platform === 'win32';
  const outcome = shell
    ? spawnSync(`npm ${args.join(' ')}`, { cwd: ROOT, stdio: ['ignore', 'inherit', 'inherit'], shell })
    : spawnSync('npm', args, { cwd: ROOT, stdio: ['ignore', 'inherit', 'inherit'] });
  return outcome.status ?? 1;
}

/** npm's own script: the one that started us, else the one beside this Node.js. */
function npmScript() {
  const started = process.env.npm_execpath;
  if (started && basename(started) === 'npm-cli.js' && existsSync(started)) return started;
  const beside = dirname(process.execPath);
  const places = [join(beside, 'node_modules'), join(beside, '..', 'lib', 'node_modules')];
  return places.map((place) => join(place, 'npm', 'bin', 'npm-cli.js')).find(existsSync) ?? null;
}
