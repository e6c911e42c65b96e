import type { Refused } from './refusal.ts';

export type DecodedText = { ok: true; text: string; note: string | null } | { ok: false; refused: Refused };

const startsWith = (bytes: Uint8Array, ...start: number[]): boolean => start.every((byte, i) => bytes[i] === byte);

const decoded = (text: string, note: string | null = null): DecodedText =>
  text.includes('\0') ? notText() : { ok: true, text, note };

const notText = (): DecodedText => ({
  ok: false,
  refused: { found: 'bytes that are no text', expected: 'a table saved as CSV, UTF-8' },
});

function decodeUtf16(bytes: Uint8Array, encoding: 'utf-16le' | 'utf-16be'): DecodedText {
  return decoded(new TextDecoder(encoding).decode(bytes), 'was read as UTF-16');
}

/**
 * The text of a file: UTF-8 with or without a byte-order mark, UTF-16 with one, and otherwise Windows-1252, of which
 * Latin-1 is a part. Spreadsheets of another format are refused by name.
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  if (startsWith(bytes, 0x50, 0x4b, 0x03, 0x04) || startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) {
    const advice = 'In the spreadsheet, save each table as CSV.';
    return {
      ok: false,
      refused: { found: 'a spreadsheet or archive under the name of a table', expected: 'CSV', advice },
    };
  }
  if (startsWith(bytes, 0xff, 0xfe)) return decodeUtf16(bytes, 'utf-16le');
  if (startsWith(bytes, 0xfe, 0xff)) return decodeUtf16(bytes, 'utf-16be');
  try {
    return decoded(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    const text = new TextDecoder('windows-1252').decode(bytes);
    return decoded(text, 'is not UTF-8 and was read as Latin-1 (Windows-1252); check names with accents');
  }
}
