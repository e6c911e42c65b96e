import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** True where a package can be installed unasked: as root on a Debian system. */
export function mayInstall() {
  return process.platform === 'linux' && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
}

/** Installs one Debian package. What apt prints goes to stderr: stdout belongs to the test run. */
export function install(name) {
  apt(['update', '-qq']);
  apt(['install', '-y', '-qq', '--no-install-recommends', name]);
}

function apt(args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync('apt-get', args, { stdio: ['ignore', 2, 2], env }).status;
}
