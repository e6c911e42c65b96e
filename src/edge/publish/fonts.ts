import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { type EmbeddedFont, FONT_RANGES } from '../../report/publish/html/style.ts';

const require = createRequire(import.meta.url);
const folderOf = (part: string): string => dirname(require.resolve(`${part}/package.json`));

/** Font files for PDF and PNG: the two families of every picture. */
export function fontFiles(): string[] {
  const [besley, sans] = [folderOf('@expo-google-fonts/besley'), folderOf('@expo-google-fonts/source-sans-3')];
  return [
    join(besley, '600SemiBold', 'Besley_600SemiBold.ttf'),
    join(sans, '400Regular', 'SourceSans3_400Regular.ttf'),
    join(sans, '600SemiBold', 'SourceSans3_600SemiBold.ttf'),
    join(sans, '700Bold', 'SourceSans3_700Bold.ttf'),
  ];
}

/** Where systems keep their fonts, as far as the folders are there: for scripts that the two families do not hold. */
export function systemFontFolders(): string[] {
  const folders = [
    '/usr/share/fonts',
    '/usr/local/share/fonts',
    '/System/Library/Fonts',
    '/Library/Fonts',
    'C:\\Windows\\Fonts',
  ];
  return folders.filter((folder) => existsSync(folder));
}

/** Letters, signs and punctuation that the two families hold: Latin, Greek, and the signs of our figures. */
const HELD =
  /^[\u0020-\u024f\u0370-\u03ff\u1e00-\u1eff\u2000-\u206f\u2070-\u209f\u20ac\u2122\u2126\u2190-\u2193\u2200-\u22ff\s]*$/u;

/** Whether a text needs fonts that we do not bring along. */
export const needsSystemFonts = (text: string): boolean => !HELD.test(text);

/** The fonts that travel inside a report: small files of the letters that reports need. */
export function embeddedFonts(): EmbeddedFont[] {
  const file = (part: string, name: string) => readFileSync(join(folderOf(part), 'files', name)).toString('base64');
  const sans = (set: string, weight: number) =>
    file('@fontsource/source-sans-3', `source-sans-3-${set}-${weight}-normal.woff2`);
  return [
    { family: 'Source Sans 3', weight: 400, data: sans('latin', 400), range: FONT_RANGES.latin },
    { family: 'Source Sans 3', weight: 600, data: sans('latin', 600), range: FONT_RANGES.latin },
    { family: 'Source Sans 3', weight: 400, data: sans('greek', 400), range: FONT_RANGES.greek },
    { family: 'Source Sans 3', weight: 600, data: sans('greek', 600), range: FONT_RANGES.greek },
    {
      family: 'Besley',
      weight: 600,
      data: file('@fontsource/besley', 'besley-latin-600-normal.woff2'),
      range: FONT_RANGES.latin,
    },
  ];
}
