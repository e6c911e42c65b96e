import Papa from 'papaparse';
import { pieceSign, quantityHead } from '../../../trial/plainWords.ts';
import type { Trial } from '../../../trial/trial.ts';
import { typedText } from '../../../units/typedText.ts';
import { harmlessCell } from '../findingsCsv.ts';

/** Something that can be seen in a recording. */
export interface Cue {
  footage: string;
  /** s from the beginning of that recording. */
  at: number;
  /** What is being done: `Mass of the conductor of KR`. */
  head: string;
  /** What was read or noted. */
  text: string;
}

const HOUR = 3600;
const MINUTE = 60;

/** Seconds of `12:31` or `1:02:31`; null for anything else. */
export function secondsOf(timecode: string): number | null {
  const parts = /^(?:(\d{1,3}):)?(\d{1,3}):(\d{2})$/.exec(timecode.trim());
  return parts === null ? null : Number(parts[1] ?? 0) * HOUR + Number(parts[2]) * MINUTE + Number(parts[3]);
}

/** `1:02:31`, or `2:31` within the first hour: the form that description boxes take for chapters. */
export function timecodeText(seconds: number): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const [h, m, s] = [Math.floor(seconds / HOUR), Math.floor(seconds / MINUTE) % MINUTE, Math.floor(seconds) % MINUTE];
  return h > 0 ? `${h}:${two(m)}:${two(s)}` : `${m}:${two(s)}`;
}

/** Everything that the filming clock has a place for, in the order of the recordings. Struck readings are left out. */
export function cuesOf(trial: Trial): Cue[] {
  const cue = (row: Readonly<Record<string, string>>, head: string, text: string): Cue[] => {
    const at = secondsOf(row.timecode ?? '');
    return at === null
      ? []
      : [{ footage: (row.footage ?? '').trim(), at, head, text: text.replace(/\s+/g, ' ').trim() }];
  };
  const read = trial.readings
    .filter(({ standing }) => standing === 'counted')
    .flatMap(({ row, quantity, specimen }) =>
      cue(
        row,
        `${quantityHead(quantity)} of ${pieceSign(trial, specimen)}`,
        typedText(row.value ?? '', row.unit ?? ''),
      ),
    );
  const noted = trial.notes.flatMap(({ row }) => cue(row, 'Note', row.text ?? row.note ?? ''));
  return [...read, ...noted].sort((a, b) => a.footage.localeCompare(b.footage, 'en') || a.at - b.at);
}

/** The cues as a table for a cutting program; no cell that a spreadsheet would run. */
export function cueSheet(cues: readonly Cue[]): string {
  const data = cues.map(({ footage, at, head, text }) => [footage, timecodeText(at), head, text].map(harmlessCell));
  return `${Papa.unparse({ fields: ['footage', 'timecode', 'what', 'read'], data }, { newline: '\n' })}\n`;
}

/** A chapter wherever something else begins to be read: the lines that a description box takes, the first at 0:00. */
export function chapterLines(cues: readonly Cue[]): string {
  const starts = cues.filter(({ head }, i) => i === 0 || head !== cues[i - 1]!.head);
  const [first] = starts;
  const lines = starts.map(({ at, head }) => `${timecodeText(at)} ${head}`);
  return [...(first && first.at > 0 ? ['0:00 Beginning'] : []), ...lines].join('\n');
}

/** Players take `<i>` and the like in subtitles for markup, and an arrow for the end of one. */
const plain = (text: string): string => text.replaceAll('<', '‹').replaceAll('>', '›');

/** How long a subtitle stands where nothing follows, s: time to read one line. */
const STANDS = 4;

/** Subtitles in the SubRip form: each reading from its moment until the next, for four seconds at most. */
export function subtitles(cues: readonly Cue[]): string {
  const two = (value: number, width = 2) => String(value).padStart(width, '0');
  const time = (s: number) =>
    `${two(Math.floor(s / HOUR))}:${two(Math.floor(s / MINUTE) % MINUTE)}:${two(Math.floor(s) % MINUTE)},000`;
  return cues
    .map(({ at, head, text }, i) => {
      const next = cues[i + 1]?.at ?? at + STANDS;
      const end = next > at ? Math.min(next, at + STANDS) : at + 1;
      return `${i + 1}\n${time(at)} --> ${time(end)}\n${plain(`${head}: ${text}`)}`;
    })
    .join('\n\n')
    .concat(cues.length > 0 ? '\n' : '');
}
