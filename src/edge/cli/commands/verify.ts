import { Command } from 'commander';
import { EXIT, Failure } from '../failure.ts';

export function verifyCommand(): Command {
  return new Command('verify')
    .summary('compute a published package again and compare')
    .description(
      'Reads a data package and computes it again: its tables against their hashes, every sealed part, and every figure of findings.json when it holds them. Exit code 1 says that something was changed or is missing, 3 that all is as it was sealed and this version of Cupel computes otherwise.',
    )
    .argument('<package>', 'folder or .zip of a data package')
    .addHelpText('after', '\nExample:\n  cupel verify fenwater.zip')
    .action(verify);
}

async function verify(path: string): Promise<void> {
  const { soundPackage } = await import('../packageAt.ts');
  const read = soundPackage(path);
  const { verifyPackage } = await import('../verifyPackage.ts');
  const checked = verifyPackage(read, path, new Date().toISOString());
  const fails = checked.filter(({ outcome }) => outcome === 'fails');
  const others = checked.filter(({ outcome }) => outcome === 'other version');
  const holds = checked.filter(({ outcome }) => outcome === 'holds');
  const lines = (list: typeof checked) => list.map(({ text }) => text).join('\n');
  if (fails.length > 0) throw new Failure(lines([...fails, ...others, ...holds]), EXIT.dataSaysNo);
  process.stdout.write(`${lines(holds)}\n`);
  if (others.length > 0) throw new Failure(lines(others), EXIT.otherVersion);
}
