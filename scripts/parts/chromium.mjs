import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { install, mayInstall } from './apt.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/** Where a Chromium is, or null: CHROME_PATH, the search path, and where each platform's installer puts it. */
export function findChromium(env = process.env, platform = process.platform) {
  return candidates(env, platform).find((path) => path && existsSync(path)) ?? null;
}

function candidates(env, platform) {
  const ending = platform === 'win32' ? '.exe' : '';
  const onPath = (env.PATH ?? '')
    .split(delimiter)
    .flatMap((folder) => NAMES.map((name) => join(folder, name + ending)));
  const usual = {
    darwin: ['Google Chrome', 'Chromium'].map((app) => `/Applications/${app}.app/Contents/MacOS/${app}`),
    win32: [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA].flatMap((folder) =>
      folder
        ? [
            join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
            join(folder, 'Chromium', 'Application', 'chrome.exe'),
          ]
        : [],
    ),
  };
  return [env.CHROME_PATH, '/usr/bin/chromium', ...onPath, ...(usual[platform] ?? [])];
}

/** Finds Chromium, installing it where that can be done unasked. Null when it cannot. */
export function findOrInstallChromium() {
  const found = findChromium();
  if (found !== null || !mayInstall()) return found;
  process.stderr.write('Installing Chromium for the page tests …\n');
  install('chromium');
  return findChromium();
}
