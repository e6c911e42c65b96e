/** What the plan prints: choices, and the sheets that the worker draws of them. */
import { signal } from '@preact/signals';
import type { Entry } from '../../../../journal/entry.ts';
import type { Paper } from '../../../../report/labels/paper.ts';
import { Bench } from '../../worker/bench.ts';
import type { SheetKind } from '../../worker/jobs.ts';
import { sentenceOf } from '../sentenceOf.ts';
import { units } from '../units.ts';

export interface DrawnSheets {
  svgs: readonly string[];
  paper: Paper;
  busy: boolean;
  sentence: string;
}

/** Letter where people write on it, by the language of the browser; A4 everywhere else. */
const LETTER = /-(US|CA|MX|PH|CL|CO)\b/;

export const paper = signal<Paper>(LETTER.test(navigator.language) ? 'Letter' : 'A4');
/** Whether the name of the piece stands beside its code. */
export const withNames = signal(true);
/** Whether a QR stands beside the code. */
export const withCodes = signal(true);
/** Where the bench answers; what a QR leads to begins with it. */
export const linkAddress = signal(location.origin);

export const sheets = signal<DrawnSheets>({ svgs: [], paper: paper.peek(), busy: true, sentence: '' });

const bench = new Bench();
let asked = 0;

/** Draws the sheets; those drawn before stay in sight until then. */
export async function drawSheets(
  entries: readonly Entry[],
  what: SheetKind,
  trial: string,
  blind: boolean,
): Promise<void> {
  asked += 1;
  const mine = asked;
  const size = paper.peek();
  sheets.value = { ...sheets.peek(), busy: true };
  const linkTo = withCodes.peek() ? `${linkAddress.peek()}/trial/${encodeURIComponent(trial)}/bench?specimen=` : null;
  try {
    const svgs = await bench.ask('sheets', {
      entries,
      what,
      paper: size,
      blind: blind || !withNames.peek(),
      linkTo,
      units: units.peek(),
    });
    if (mine === asked) sheets.value = { svgs, paper: size, busy: false, sentence: '' };
  } catch (error) {
    const sentence = sentenceOf(error);
    if (mine === asked) sheets.value = { svgs: [], paper: size, busy: false, sentence };
  }
}
