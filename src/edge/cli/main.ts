import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../files/projectRoot.ts';
import { EXIT } from './failure.ts';
import { run } from './run.ts';

// A reader that has seen enough (`| head`) closes the pipe: that is no error, and there is nobody left to tell.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit();
  process.stderr.write(`What was found could not be written (${error.code}).\n`);
  process.exit(EXIT.dataSaysNo);
});
process.stderr.on('error', () => {});

const { version } = JSON.parse(readFileSync(join(projectRoot(), 'package.json'), 'utf8')) as { version: string };
process.exitCode = await run(process.argv.slice(2), version);
