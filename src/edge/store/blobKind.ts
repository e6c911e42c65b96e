/** What a blob may be, told by its first bytes and never by what somebody calls it. */
export interface BlobKind {
  /** Media type, as an HTTP answer names it. */
  type: string;
  /** Ending of a file name, without the dot. */
  ending: string;
}

const JPEG: BlobKind = { type: 'image/jpeg', ending: 'jpg' };
const PNG: BlobKind = { type: 'image/png', ending: 'png' };
const WEBP: BlobKind = { type: 'image/webp', ending: 'webp' };
const HEIC: BlobKind = { type: 'image/heic', ending: 'heic' };
const PDF: BlobKind = { type: 'application/pdf', ending: 'pdf' };
const CSV: BlobKind = { type: 'text/csv; charset=utf-8', ending: 'csv' };

/** The kinds of a photo, as a sentence names them. */
export const PHOTOS_TAKEN = 'a photo (JPEG, PNG, WebP, HEIC)';
/** The kinds that are taken, as a sentence names them. */
export const KINDS_TAKEN = `${PHOTOS_TAKEN}, a PDF, or a plain text log such as CSV in UTF-8`;

/**
 * Brands of a still picture coded with HEVC, at byte 8 of the file and in the list after it.
 * ISO/IEC 23008-12 (HEIF), annex B: heic, heix, heim, heis; mif1 is the structural brand that some phones put first.
 */
const HEIC_BRANDS = ['heic', 'heix', 'heim', 'heis', 'mif1'];

/**
 * The kind of a photo or log by its content; null when it is none that is taken.
 *
 * JPEG: FF D8 FF (ITU-T T.81, B.1.1.3: SOI, then another marker). PNG: eight bytes (W3C PNG specification, 5.2). WebP:
 * `RIFF`, size, `WEBP` (RFC 9649, 2.4). HEIC: box `ftyp` with a brand of above. PDF: `%PDF-` (ISO 32000-1, 7.5.2).
 * Text: UTF-8 without control characters that does not begin with `<`, so that no page and no drawing with a script in
 * it passes for a log.
 */
export function blobKind(bytes: Uint8Array): BlobKind | null {
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return JPEG;
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return PNG;
  if (letters(bytes, 0, 4) === 'RIFF' && letters(bytes, 8, 4) === 'WEBP') return WEBP;
  if (isHeic(bytes)) return HEIC;
  if (letters(bytes, 0, 5) === '%PDF-') return PDF;
  return isPlainText(bytes) ? CSV : null;
}

/** Whether the content is a picture of a kind that is taken: a log or a PDF is kept, too, but never as a photo. */
export const isPhoto = (bytes: Uint8Array): boolean => blobKind(bytes)?.type.startsWith('image/') ?? false;

function startsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, at) => bytes[at] === byte);
}

function letters(bytes: Uint8Array, from: number, count: number): string {
  return String.fromCharCode(...bytes.subarray(from, from + count));
}

function isHeic(bytes: Uint8Array): boolean {
  if (letters(bytes, 4, 4) !== 'ftyp') return false;
  const size = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength).getUint32(0);
  const end = Math.min(size, bytes.byteLength);
  if (HEIC_BRANDS.includes(letters(bytes, 8, 4))) return true;
  // Compatible brands follow the major brand and its version, four bytes each.
  for (let at = 16; at + 4 <= end; at += 4) if (HEIC_BRANDS.includes(letters(bytes, at, 4))) return true;
  return false;
}

/** Control characters other than tab, line feed and carriage return: a text that somebody can read has none. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const CONTROLS = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/;

function isPlainText(bytes: Uint8Array): boolean {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return text.trim() !== '' && !CONTROLS.test(text) && !text.trimStart().startsWith('<');
  } catch {
    return false;
  }
}
