import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { PROJECT_ROOT } from './sourceFiles.ts';

export interface Ran {
  code: number | null;
  stdout: string;
  stderr: string;
}

export interface RunOptions {
  /** Folder of the shelf. */
  home: string;
  cwd?: string;
  env?: Record<string, string>;
}

/** Longest that one command may take before it counts as hanging, ms. */
const PATIENCE_MS = 180_000;

/**
 * Builds when the sources changed, and puts a copy of the built program into `folder`, as somebody has it who unpacked
 * it there. The packages are the project's own, by a link.
 */
export function builtProgramIn(folder: string): string {
  const built = spawnSync(process.execPath, [join(PROJECT_ROOT, 'scripts', 'build.mjs')], { encoding: 'utf8' });
  if (built.status !== 0) throw new Error(`The program could not be built: ${built.stdout}${built.stderr}`);
  const program = join(folder, 'Cupel, unpacked here');
  mkdirSync(program);
  const parts = [
    'dist',
    'demo',
    'src',
    'scripts',
    'bin',
    'package.json',
    'package-lock.json',
    'tsconfig.json',
    'vite.config.ts',
  ];
  for (const part of parts)
    cpSync(join(PROJECT_ROOT, part), join(program, part), { recursive: true, preserveTimestamps: true });
  symlinkSync(join(PROJECT_ROOT, 'node_modules'), join(program, 'node_modules'), 'junction');
  return program;
}

function environment({ home, env = {} }: RunOptions): NodeJS.ProcessEnv {
  return { ...process.env, CUPEL_HOME: home, CI: 'true', CUPEL_DEBUG: '', DATABASE_URL: '', ...env };
}

/** Runs a script of the program with its arguments to the end. */
export function ranToEnd(script: string, args: readonly string[], options: RunOptions): Ran {
  const ran = spawnSync(process.execPath, [script, ...args], {
    cwd: options.cwd,
    env: environment(options),
    encoding: 'utf8',
    input: '',
    timeout: PATIENCE_MS,
    maxBuffer: 256 * 1024 * 1024,
  });
  return { code: ran.status, stdout: ran.stdout, stderr: ran.stderr };
}

export interface Bench {
  address: string;
  child: ChildProcess;
  /** Resolves with the exit code, null when it was killed. */
  ended: Promise<number | null>;
}

/** Starts the bench at a port of the system's choosing, and waits until it has printed its address. */
export function startedBench(script: string, args: readonly string[], options: RunOptions): Promise<Bench> {
  const child = spawn(process.execPath, [script, ...args], {
    cwd: options.cwd,
    env: environment(options),
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ended = new Promise<number | null>((resolve) => {
    child.once('exit', (code) => resolve(code));
  });
  return new Promise((resolve, reject) => {
    let said = '';
    const hear = (text: Buffer) => {
      said += text;
      const address = /http:\/\/127\.0\.0\.1:\d+/.exec(said)?.[0];
      if (address !== undefined) resolve({ address, child, ended });
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    ended.then((code) => reject(new Error(`The bench ended with ${code} and said: ${said}`)));
  });
}
