/** What the program prints of the invented trial, and what it says to a spoilt copy of it. */
import { demoFiles } from '../../demo/make/demoTrial.ts';
import { findingsOf } from '../../src/findings/findings.ts';
import type { Findings } from '../../src/findings/schema.ts';
import { type PackageReading, readPackage } from '../../src/report/package/readPackage.ts';
import { refusalText } from '../../src/report/package/refusal.ts';
import { assayTable } from '../../src/report/text/assayTable.ts';
import { fold } from '../../src/trial/fold.ts';

/** A moment after the invented bench day, so that its dates have come. */
const NOW = '2026-12-01T00:00:00Z';

/** Made once: its sealed parts are worked out from their findings, which takes a moment. */
let made: ReadonlyMap<string, string> | null = null;

function readDemo(spoil: (file: string, text: string) => string = (_file, text) => text): PackageReading {
  const encoder = new TextEncoder();
  made ??= demoFiles();
  const files = [...made].map(([name, text]): [string, Uint8Array] => [name, encoder.encode(spoil(name, text))]);
  return readPackage(new Map(files), { trial: 'demo', now: NOW });
}

/** Findings of the invented trial, in closed form. */
export function demoFindings(): Findings {
  return findingsOf(fold(readDemo().entries), { draws: 0 });
}

/** What `cupel assay demo` prints. */
export function assayDemoText(): string {
  return `\`\`\`text\n$ npx cupel assay demo\n\n${assayTable(demoFindings()).trimEnd()}\n\`\`\``;
}

/** One slip in each: the file, what stood there, and what somebody might have typed instead. */
const SLIPS: readonly (readonly [file: string, stood: string, typed: string])[] = [
  ['readings.csv', 'brackenfell-whole,resistance,0.971,mohm,', 'brackenfell-whole,resistance,0.971,mm,'],
  ['readings.csv', 'brackenfell-whole,resistance,0.972,', 'brackenfell-whole,resistence,0.972,'],
  ['readings.csv', 'brackenfell-apart,conductor_mass,', 'brackenfell-apart,conductor_mass,-'],
  ['readings.csv', 'nine-elms-whole,resistance,', 'nine-elms-hole,resistance,'],
  ['specimens.csv', 'brackenfell-apart,brackenfell,KR,300,mm', 'brackenfell-apart,brackenfell,KR,300,g'],
  ['cables.csv', '2026-09-19', '2027-09-19'],
];

/** The sentence that each slip gets, one a line. */
export function refusalExamples(): string {
  const sentences = SLIPS.map(([file, stood, typed]) => {
    const { refusals } = readDemo((name, text) => (name === file ? text.replace(stood, typed) : text));
    if (refusals.length === 0) throw new RangeError(`"${typed}" in ${file} was not refused`);
    return refusalText(refusals[0]!);
  });
  return `\`\`\`text\n${sentences.join('\n')}\n\`\`\``;
}
