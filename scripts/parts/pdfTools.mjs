import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { install, mayInstall } from './apt.mjs';

/** Readers of PDF that know nothing of us, and the Debian package of each. */
const TOOLS = { pdftotext: 'poppler-utils', qpdf: 'qpdf' };

function onPath(name, env = process.env) {
  const ending = process.platform === 'win32' ? '.exe' : '';
  return (env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name + ending))
    .find((path) => existsSync(path));
}

/** Where `pdftotext` and `qpdf` are, installing what is missing where that can be done unasked; null for what cannot be had. */
export function findOrInstallPdfTools() {
  return Object.fromEntries(
    Object.entries(TOOLS).map(([name, debian]) => {
      const found = onPath(name);
      if (found === undefined && mayInstall()) {
        process.stderr.write(`Installing ${debian} to read the report with …\n`);
        install(debian);
      }
      return [name, found ?? onPath(name) ?? null];
    }),
  );
}
