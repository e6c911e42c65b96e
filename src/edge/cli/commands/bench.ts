import { Command } from 'commander';
import { DEVICE_ROLES, type DeviceRole } from '../../store/devices.ts';
import { readHost, readPort, readRole } from '../options.ts';

export interface BenchOptions {
  /** Undefined: the usual port, or the next one that is free. */
  port?: number;
  open: boolean;
  /** Listen on the local network at once, and show a code. */
  share: boolean;
  /** What the device that uses that code may do. */
  role: DeviceRole;
  /** Further names under which the bench is reached. */
  host: string[];
  tlsCert?: string;
  tlsKey?: string;
}

export function benchCommand(): Command {
  return new Command('bench')
    .summary('start the bench page (also without any command)')
    .description(
      'Starts the bench page for this computer alone, prints its address, and opens it where there is a desktop. With --share, phones on the local network may be added.',
    )
    .option('--port <number>', 'port to listen on; 4870 or the next free one when left out', readPort)
    .option('--no-open', 'do not open a browser')
    .option('--share', 'listen on the local network too, and show a code that adds one phone', false)
    .option('--role <role>', `what that phone may do: ${DEVICE_ROLES.join(', ')}`, readRole, 'recorder')
    .option('--host <name>', 'a further name of this computer; may be given again', readHost, [])
    .option('--tls-cert <file>', 'certificate (PEM) for the local network, see docs/add-a-phone.md')
    .option('--tls-key <file>', 'private key (PEM) of that certificate')
    .addHelpText('after', '\nExamples:\n  cupel\n  cupel bench --port 5000 --no-open\n  cupel bench --share')
    .action(async (options: BenchOptions) => {
      const { runBench } = await import('../runBench.ts');
      await runBench(options);
    });
}
