import type { CableFindings, Findings } from '../../findings/schema.ts';
import { andList } from '../words/andList.ts';
import { saidTogether } from '../words/saidTogether.ts';
import { type AssayPage, shown } from './assayPage.ts';
import { truncate } from './displayWidth.ts';
import { wrap } from './wrap.ts';

/** A name longer than this would push its note off the line. */
const LONGEST_NAME = 24;
const INDENT = '  ';
const CONTINUED = '    ';

/**
 * Two blocks below the table: what a reader should know (the warnings, then what is missing or was assumed where no warning
 * said it already), and the reading of each cable that would help most. A block with nothing to say has no lines.
 */
export function noteLines(page: AssayPage): string[][] {
  const { findings, cables } = page;
  const name = namesOf(findings);
  const warnings = findings.warnings.flatMap(({ cable, text }) => note(page, name(cable), text));
  const unsaid = cables.flatMap((cable) =>
    unsaidOf(findings, cable).flatMap((text) => note(page, name(cable.cable), text)),
  );
  const next = cables.flatMap((cable) =>
    cable.next_reading === null ? [] : note(page, name(cable.cable), cable.next_reading.text),
  );
  return [headed('To know', [...warnings, ...unsaid]), headed('One more measurement', next)];
}

const headed = (head: string, lines: string[]): string[] => (lines.length === 0 ? [] : [head, ...lines]);

function namesOf(findings: Findings): (cable: string | null) => string {
  const names = new Map(findings.cables.map((cable) => [cable.cable, cable.name === '' ? cable.cable : cable.name]));
  return (cable) => (cable === null ? '' : (names.get(cable) ?? cable));
}

/** What a cable's findings say that none of the warnings has said of it. */
function unsaidOf({ warnings }: Findings, cable: CableFindings): string[] {
  const said = (code: string): boolean =>
    warnings.some((warning) => warning.cable === cable.cable && warning.code.startsWith(code));
  const recheck = cable.consistency?.recheck ?? null;
  const notes: string[] = [];
  if (recheck !== null && !said('recheck')) {
    notes.push(`Take again: ${recheck.replaceAll('_', ' ')}. ${cable.consistency?.sentence ?? ''}`);
  }
  if (!said('missing')) notes.push(saidTogether('Missing', cable.missing));
  if (!said('assumed')) notes.push(saidTogether('Assumed', cable.assumed, andList));
  return notes.filter((text) => text !== '');
}

/** `  Name: the text`, its later lines set in. */
function note(page: AssayPage, name: string, text: string): string[] {
  const short = truncate(shown(name, page), LONGEST_NAME, page.glyphs.ellipsis);
  const whole = short === '' ? shown(text, page) : `${short}: ${shown(text, page)}`;
  return wrap(whole, page.width - CONTINUED.length).map((line, i) => (i === 0 ? INDENT : CONTINUED) + line);
}
