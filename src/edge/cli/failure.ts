/** Exit codes of every command. */
export const EXIT = {
  done: 0,
  /** The data says no: a refused row, a package that does not verify, a file that cannot be used. */
  dataSaysNo: 1,
  /** What was published is as it was, and this version of the program computes otherwise. */
  otherVersion: 3,
  /** The command was not used as it is meant. */
  wrongUse: 2,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Ends a command with one sentence on stderr and an exit code. */
export class Failure extends Error {
  override name = 'Failure';
  readonly code: ExitCode;
  constructor(sentence: string, code: ExitCode) {
    super(sentence);
    this.code = code;
  }
}
