import type { SourceFile } from './sourceFiles.ts';
import { syntaxNodes } from './syntax.ts';

/** Longest that a file of ours may be, in lines. */
export const LONGEST_FILE = 400;

/** Words with which the program would promise, accuse or crown. The finding has three outcomes and no others. */
const NEVER_SAID =
  /\b(safe|unsafe|approved?|verdicts?|sold[ _-]as|fakes?|liars?|winners?|losers?|suspect|guaranteed?)\b/i;
/** The same for what people write about the program; there "safe" and "approved" may be denied in so many words. */
const NEVER_WRITTEN = /\b(verdicts?|sold as|fakes?|liars?|winners?|losers?)\b/i;
/** Folders that exist only on the machine of whoever wrote the line. */
const MACHINE_PATH = /(?<![\w.~-])\/(work|tmp|root|home)\//;
const REGISTRY_HOST = new RegExp(['registry', 'npmjs'].join(String.raw`\.`) + String.raw`|npmjs\.(org|com)`);

export function tooLong(file: SourceFile): string[] {
  const lines = file.text.split('\n').length - (file.text.endsWith('\n') ? 1 : 0);
  return lines > LONGEST_FILE ? [`${file.path}: ${lines} lines, at most ${LONGEST_FILE}`] : [];
}

export function machinePlaces(file: SourceFile): string[] {
  return findEach(file, MACHINE_PATH, 'names a folder of one machine').concat(
    findEach(file, REGISTRY_HOST, 'names a registry'),
  );
}

export function downloadAddresses(lockfile: string): string[] {
  return lockfile.split('\n').filter((line) => /"resolved":\s*"https?:/.test(line));
}

/** Words that the program may not say, looked for in what it can print: texts in code, not names or comments. */
export function wordsSaid(file: SourceFile): string[] {
  const texts = syntaxNodes(file.path, file.text).flatMap(({ node, parent }) => {
    if (parent !== null && /Import|Export|TSLiteralType/.test(parent.type)) return [];
    if (node.type === 'Literal' && typeof node.value === 'string') return [node.value];
    if (node.type === 'TemplateElement') return [(node.value as { raw: string }).raw];
    if (node.type === 'JSXText') return [String(node.value)];
    return [];
  });
  return texts.flatMap((text) => {
    const word = NEVER_SAID.exec(text)?.[0];
    return word === undefined ? [] : [`${file.path}: says "${word}" in "${text.trim().slice(0, 80)}"`];
  });
}

export function wordsWritten(file: SourceFile): string[] {
  return findEach(file, NEVER_WRITTEN, 'writes');
}

function findEach(file: SourceFile, pattern: RegExp, what: string): string[] {
  return file.text.split('\n').flatMap((line, index) => {
    const found = pattern.exec(line);
    return found === null ? [] : [`${file.path}:${index + 1} ${what} (${found[0]})`];
  });
}
