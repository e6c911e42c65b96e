import { spawnSync } from 'node:child_process';
import { ROOT } from './root.mjs';

/**
 * Runs a script of an installed package with this same Node.js, so that no shell has to find it and no path with spaces
 * has to be quoted. `quiet` keeps its output back unless it fails.
 */
export function runNode(script, args, { quiet = false, env = {} } = {}) {
  const outcome = spawnSync(process.execPath, [script, ...args], {
    cwd: ROOT,
    stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...env },
    maxBuffer: 64 * 1024 * 1024,
  });
  if (quiet && outcome.status !== 0) {
    process.stderr.write(outcome.stdout ?? '');
    process.stderr.write(outcome.stderr ?? '');
  }
  return outcome.status ?? 1;
}
