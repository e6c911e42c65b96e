/** Why something was not let in: where it stands, what was found, what was expected and what to do. */
export interface Refusal {
  file: string;
  /** Line of the file as an editor counts them; null when it concerns the whole file. */
  line: number | null;
  column: string | null;
  found: string;
  expected: string;
  /** What to do about it; may be empty. */
  advice: string;
}

export interface Refused {
  found: string;
  expected: string;
  advice?: string;
}

export function refusal(
  file: string,
  line: number | null,
  column: string | null,
  { found, expected, advice = '' }: Refused,
): Refusal {
  return { file, line, column, found, expected, advice };
}

/** One sentence, with a second one where there is advice: `readings.csv, line 12, value: found "5.6 oz" (a mass); expected a length, such as 150 mm.` */
export function refusalText({ file, line, column, found, expected, advice }: Refusal): string {
  const place = [file, line === null ? '' : `line ${line}`, column ?? ''].filter((part) => part !== '').join(', ');
  return `${place}: found ${found}; expected ${expected}.${advice ? ` ${advice}` : ''}`;
}

/** Thrown where nothing can be read at all, such as a damaged .zip; the message is the sentence. */
export class PackageRefused extends Error {
  readonly refusal: Refusal;

  constructor(because: Refusal) {
    super(refusalText(because));
    this.name = 'PackageRefused';
    this.refusal = because;
  }
}
