import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PROJECT_ROOT, type SourceFile, sourceFilesUnder } from './sourceFiles.ts';

const TEXT =
  /\.(ts|tsx|mjs|js|json|md|csv|css|html|svg|txt|py|yml|yaml|toml)$|(^|\/)(run|LICENSE|\.npmrc|\.editorconfig|\.gitignore)$/;

/** Text files that belong to the project: what git tracks, or, in a copy without git, everything but what is built. */
export function projectTextFiles(): SourceFile[] {
  return projectPaths()
    .filter((path) => TEXT.test(path) && existsSync(join(PROJECT_ROOT, path)))
    .map((path) => ({ path, text: readFileSync(join(PROJECT_ROOT, path), 'utf8') }));
}

function projectPaths(): string[] {
  try {
    const listed = execFileSync('git', ['ls-files', '-z'], { cwd: PROJECT_ROOT, encoding: 'utf8', stdio: 'pipe' });
    if (listed.length > 0) return listed.split('\0').filter((path) => path !== '');
  } catch {
    // Not a git checkout, or no git on this machine: fall through to reading the folders.
  }
  return ['src', 'test', 'docs', 'demo', 'bench', 'scripts', 'bin']
    .filter((folder) => existsSync(join(PROJECT_ROOT, folder)))
    .flatMap((folder) => sourceFilesUnder(folder, ['']).map((file) => file.path));
}
