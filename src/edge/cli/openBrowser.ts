import { spawn } from 'node:child_process';

/** True where somebody sits before a desktop: not on a build machine, not over a remote shell, not without a display. */
export function wantsBrowser(env: NodeJS.ProcessEnv, platform: string): boolean {
  if (env.CI || env.SSH_CONNECTION || env.SSH_TTY || env.SSH_CLIENT) return false;
  return platform === 'darwin' || platform === 'win32' || Boolean(env.DISPLAY || env.WAYLAND_DISPLAY);
}

/** The platform's own way to open an address: program and arguments. */
export function browserCommand(address: string, platform: string): [string, string[]] {
  if (platform === 'darwin') return ['open', [address]];
  if (platform === 'win32') return ['rundll32', ['url.dll,FileProtocolHandler', address]];
  return ['xdg-open', [address]];
}

/** Opens the address; when that does not work nobody is troubled, the address stands on the screen. */
export function openBrowser(address: string, platform: string): void {
  const [program, args] = browserCommand(address, platform);
  try {
    const child = spawn(program, args, { detached: true, stdio: 'ignore' });
    child.on('error', () => {});
    child.unref();
  } catch {
    // Not found, or not allowed.
  }
}
