import { Command } from 'commander';
import { readPort } from '../options.ts';

export interface BenchOptions {
  /** Undefined: the usual port, or the next one that is free. */
  port?: number;
  open: boolean;
}

export function benchCommand(): Command {
  return new Command('bench')
    .summary('start the bench page (also without any command)')
    .description(
      'Starts the bench page for this computer alone, prints its address, and opens it where there is a desktop.',
    )
    .option('--port <number>', 'port to listen on; 4870 or the next free one when left out', readPort)
    .option('--no-open', 'do not open a browser')
    .addHelpText('after', '\nExamples:\n  cupel\n  cupel bench --port 5000 --no-open')
    .action(async (options: BenchOptions) => {
      const { runBench } = await import('../runBench.ts');
      await runBench(options);
    });
}
