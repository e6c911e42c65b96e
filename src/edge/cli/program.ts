import { Command, Help, type Option } from 'commander';
import { assayCommand } from './commands/assay.ts';
import { backupCommand } from './commands/backup.ts';
import { benchCommand } from './commands/bench.ts';
import { cardCommand } from './commands/card.ts';
import { exportCommand } from './commands/export.ts';
import { importCommand } from './commands/import.ts';
import { reportCommand } from './commands/report.ts';
import { restoreCommand } from './commands/restore.ts';
import { runCommand } from './commands/run.ts';
import { sealCommand } from './commands/seal.ts';
import { shelfCommand } from './commands/shelf.ts';
import { verifyCommand } from './commands/verify.ts';
import { EXIT, Failure } from './failure.ts';
import { meantOption } from './otherWords.ts';

/** The command line: its commands, its help, and how wrong use is told. */
export function program(version: string): Command {
  const cupel = new Command('cupel')
    .description('What is inside a power cable, weighed and ohmed, against what its label says.')
    .version(version, '-V, --version', 'print the version')
    .helpCommand(false)
    .addHelpText(
      'after',
      '\nExamples:\n  cupel                     start the bench page\n  cupel assay demo          print the findings of the invented trial' +
        '\n\nExit codes: 0 done, 1 the data says no, 2 wrong use. CUPEL_HOME names another folder for the shelf, DATABASE_URL a PostgreSQL database.',
    );
  for (const command of [
    benchCommand(),
    assayCommand(),
    runCommand(),
    shelfCommand(),
    importCommand(),
    exportCommand(),
    reportCommand(),
    cardCommand(),
    sealCommand(),
    verifyCommand(),
    backupCommand(),
    restoreCommand(),
  ])
    cupel.addCommand(command);
  for (const command of [cupel, ...cupel.commands]) {
    tellWrongUseInOneSentence(command);
    command.configureHelp({ optionDescription });
  }
  return cupel;
}

const usual = new Help();

/** What an option is for, with its default where that says something: an option left out is off, and a list empty. */
function optionDescription(option: Option): string {
  const preset: unknown = option.defaultValue;
  const empty = preset === false || (typeof preset === 'object' && preset !== null && Object.keys(preset).length === 0);
  return empty ? option.description : usual.optionDescription(option);
}

function tellWrongUseInOneSentence(command: Command): void {
  const help = command.name() === 'cupel' ? 'cupel --help' : `cupel ${command.name()} --help`;
  command.exitOverride().configureOutput({
    outputError: (text) => {
      throw new Failure(`${sentence(text, command.name())} See ${help}.`, EXIT.wrongUse);
    },
  });
}

/** `error: unknown option '--x'` → `Unknown option '--x'.`, with what is meant by it, or else the parser's own suggestion. */
function sentence(text: string, command: string): string {
  const plain = text.trim().replace(/^error:\s*/, '');
  const [unknown, typed] = /^unknown option '(.+?)'/.exec(plain) ?? [];
  const meant = typed === undefined ? null : meantOption(command, typed);
  const suggested = meant
    ? `${unknown}. Did you mean ${meant}?`
    : plain.replace(/\s*\(Did you mean (.+?)\?\)$/s, '. Did you mean $1?');
  const capital = suggested.charAt(0).toUpperCase() + suggested.slice(1).replace(/\s*\n\s*/g, ' ');
  return /[.?!]$/.test(capital) ? capital : `${capital}.`;
}

const HELP_OR_VERSION = ['-h', '--help', '-V', '--version'];

/** Arguments as typed, with the bench put first when no command was named. */
export function withBenchFirst(args: readonly string[]): string[] {
  const first = args[0];
  const none = first === undefined || (first.startsWith('-') && !HELP_OR_VERSION.includes(first));
  return none ? ['bench', ...args] : [...args];
}
