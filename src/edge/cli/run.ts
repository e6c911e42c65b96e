import { CommanderError } from 'commander';
import { PackageRefused } from '../../report/package/refusal.ts';
import { FileRefusal } from '../files/fileRefusal.ts';
import { StoreRefusal } from '../store/store.ts';
import { debugging } from './debugging.ts';
import { EXIT, Failure } from './failure.ts';
import { program, withBenchFirst } from './program.ts';

/** Runs one command to its end and answers its exit code. Every error becomes one sentence on stderr. */
export async function run(args: readonly string[], version: string): Promise<number> {
  try {
    await program(version).parseAsync(withBenchFirst(args), { from: 'user' });
    return Number(process.exitCode ?? EXIT.done);
  } catch (error) {
    return told(error);
  }
}

function told(error: unknown): number {
  // Printing the help or the version ends the parser with an error of its own.
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.wrongUse;
  if (debugging() && error instanceof Error) process.stderr.write(`${error.stack}\n`);
  process.stderr.write(`${sentenceOf(error)}\n`);
  return error instanceof Failure ? error.code : EXIT.dataSaysNo;
}

/** Errors whose message was written for the person. */
const SENTENCES = [Failure, FileRefusal, StoreRefusal, PackageRefused];

function sentenceOf(error: unknown): string {
  if (SENTENCES.some((kind) => error instanceof kind)) return (error as Error).message;
  const text = error instanceof Error ? error.message : String(error);
  return `Cupel could not finish: ${text.split('\n')[0]} (set CUPEL_DEBUG=1 to see where).`;
}
