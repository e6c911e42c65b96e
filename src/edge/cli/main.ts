import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../files/projectRoot.ts';
import { run } from './run.ts';

// A reader that has seen enough (`| head`) closes the pipe: that is no error.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  throw error;
});

const { version } = JSON.parse(readFileSync(join(projectRoot(), 'package.json'), 'utf8')) as { version: string };
process.exitCode = await run(process.argv.slice(2), version);
