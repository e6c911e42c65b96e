/** The page's own fonts for files that are made here: they travel inside a report or a card. */
import besley from '@fontsource/besley/files/besley-latin-600-normal.woff2?url';
import greek400 from '@fontsource/source-sans-3/files/source-sans-3-greek-400-normal.woff2?url';
import greek600 from '@fontsource/source-sans-3/files/source-sans-3-greek-600-normal.woff2?url';
import latin400 from '@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff2?url';
import latin600 from '@fontsource/source-sans-3/files/source-sans-3-latin-600-normal.woff2?url';
import latin700 from '@fontsource/source-sans-3/files/source-sans-3-latin-700-normal.woff2?url';
import { type EmbeddedFont, FONT_RANGES } from '../../../../report/publish/html/style.ts';

interface FontFile extends Omit<EmbeddedFont, 'data'> {
  address: string;
}

const { latin, greek } = FONT_RANGES;
const FILES: readonly FontFile[] = [
  { family: 'Source Sans 3', weight: 400, range: latin, address: latin400 },
  { family: 'Source Sans 3', weight: 600, range: latin, address: latin600 },
  { family: 'Source Sans 3', weight: 400, range: greek, address: greek400 },
  { family: 'Source Sans 3', weight: 600, range: greek, address: greek600 },
  { family: 'Besley', weight: 600, range: latin, address: besley },
];
/** In cards alone. */
const BOLD: FontFile = { family: 'Source Sans 3', weight: 700, range: latin, address: latin700 };

const NO_FONT =
  'This cannot be made just now: it takes a font of this page, and the bench computer, which gives it, does not answer. Try again when it can be reached.';

const read = new Map<string, Promise<string>>();

/** The fonts of a report, or of a card. Once read they are there without the bench computer too. */
export function pageFonts(use: 'report' | 'card'): Promise<EmbeddedFont[]> {
  const files = use === 'card' ? [...FILES, BOLD] : FILES;
  return Promise.all(files.map(async ({ address, ...font }) => ({ ...font, data: await base64At(address) })));
}

/**
 * Reads the fonts while the bench computer is there: a page that came over plain http has no other copy of them. What cannot be read
 * now is tried again when it is wanted.
 */
export function fetchFontsAhead(): void {
  pageFonts('card').catch(() => {});
}

function base64At(address: string): Promise<string> {
  const known = read.get(address);
  if (known !== undefined) return known;
  const reading = readBase64(address);
  read.set(address, reading);
  // A file that could not be read is asked for again the next time.
  reading.catch(() => read.delete(address));
  return reading;
}

async function readBase64(address: string): Promise<string> {
  const answer = await fetch(address).catch(() => null);
  if (!answer?.ok) throw new Error(NO_FONT);
  const bytes = new Uint8Array(await answer.arrayBuffer());
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}
