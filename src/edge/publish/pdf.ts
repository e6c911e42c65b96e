import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { fontFiles, needsSystemFonts, systemFontFolders } from './fonts.ts';

/** PDF/UA-1 (ISO 14289-1): for screen readers. */
const FOR_SCREEN_READERS = 'ua-1';

/**
 * Sets a report as a PDF: tagged, with bookmarks and its fonts inside.
 *
 * It keeps to PDF/UA-1 unless a name holds characters for which no font is there; then it is an ordinary tagged PDF.
 *
 * @param source Typst, made by `reportTypst`
 * @param made seconds since 1970: the file's date, so that the same report gives the same bytes
 */
export function reportPdf(source: string, made: number): Uint8Array {
  const fontPaths = [...fontFiles(), ...(needsSystemFonts(source) ? systemFontFolders() : [])];
  const compiler = NodeCompiler.create({ fontArgs: [{ fontPaths }] });
  const set = (standard?: string) =>
    compiler.pdf(
      { mainFileContent: source },
      { creationTimestamp: made, ...(standard ? { pdfStandard: standard as never } : {}) },
    );
  try {
    return set(FOR_SCREEN_READERS);
  } catch (problem) {
    if (problem instanceof Error && /PDF\/UA-1/.test(problem.message)) return set();
    throw problem;
  }
}
