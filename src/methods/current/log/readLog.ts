import { ZERO_CELSIUS } from '../../../units/dimension.ts';
import { clockSeconds, dateOf } from './clock.ts';
import { cellsOf, type LogColumn, type LogLayout, type LogRole, missingOf } from './columns.ts';

/** A log in SI: s since its first row, A, K, V. A cell that holds no figure is NaN. */
export interface Log {
  time: Float64Array;
  current: Float64Array | null;
  conductor: Float64Array | null;
  surface: Float64Array | null;
  ambient: Float64Array | null;
  drop: Float64Array | null;
  /** Rows left out because their time could not be read, and the first of them (counted from 1 below the names). */
  unreadable: { rows: number; first: number | null };
  /** Spans without a row, far longer than the usual step: from and to, s. */
  gaps: { from: number; to: number }[];
  /** Usual step between rows, s: the median. */
  step: number;
}

export interface LogProgress {
  characters: number;
  rows: number;
}

/** A log that cannot be read, in one sentence. */
export class LogRefused extends Error {
  override name = 'LogRefused';
}

type Figures = Exclude<LogRole, 'time' | 'unused'>;
const FIGURES: readonly Figures[] = ['current', 'conductor', 'surface', 'ambient', 'drop'];

const TO_SI: Readonly<Record<string, (x: number) => number>> = {
  s: (x) => x,
  ms: (x) => x / 1000,
  min: (x) => x * 60,
  h: (x) => x * 3600,
  A: (x) => x,
  mA: (x) => x / 1000,
  V: (x) => x,
  mV: (x) => x / 1e3,
  µV: (x) => x / 1e6,
  K: (x) => x,
  '°C': (x) => x + ZERO_CELSIUS,
  '°F': (x) => ((x - 32) * 5) / 9 + ZERO_CELSIUS,
};

/** A step this many times the usual one is a gap. Common practice, no source. */
const GAP = 10;
/** A clock without a date that falls by more than this, s, passed midnight. */
const MIDNIGHT = 12 * 3600;
const DAY = 86_400;
const FIRST_ROOM = 4096;

/** A column of numbers that grows. */
class Growing {
  private values = new Float64Array(FIRST_ROOM);
  length = 0;

  push(value: number): void {
    if (this.length === this.values.length) {
      const larger = new Float64Array(2 * this.values.length);
      larger.set(this.values);
      this.values = larger;
    }
    this.values[this.length++] = value;
  }

  done(): Float64Array {
    return this.values.slice(0, this.length);
  }
}

/**
 * Reads a log piece by piece, so that a million rows need no second copy of their text. Give it the text in pieces of any
 * size; ask for the log at the end.
 */
export class LogReader {
  private readonly layout: LogLayout;
  private readonly time: LogColumn;
  private readonly clock: boolean;
  private readonly dateColumn: number;
  private readonly read: { role: Figures; index: number; toSI: (x: number) => number }[];
  private readonly times = new Growing();
  private readonly figures = new Map<Figures, Growing>();
  private rest = '';
  private headLeft: number;
  private characters = 0;
  private row = 0;
  private days = 0;
  private last = Number.NaN;
  private unreadable = 0;
  private firstUnreadable: number | null = null;

  /** @throws LogRefused when a column that is needed is not there. */
  constructor(layout: LogLayout, columns: readonly LogColumn[]) {
    const missing = missingOf(columns);
    if (missing.length > 0) throw new LogRefused(`This log cannot be read: ${missing.join(', ')}.`);
    this.layout = layout;
    this.headLeft = layout.headLines;
    this.time = columns.find((c) => c.role === 'time')!;
    this.clock = this.time.unit === 'clock';
    // A date in a column of its own beside a clock.
    this.dateColumn = this.clock
      ? layout.names.findIndex((name, i) => i !== this.time.index && /date|datum/i.test(name))
      : -1;
    this.read = columns.flatMap((c) => {
      const role = FIGURES.find((r) => r === c.role);
      if (role === undefined) return [];
      const toSI = TO_SI[c.unit];
      if (!toSI) throw new LogRefused(`"${c.unit}" is no unit of a log.`);
      this.figures.set(role, new Growing());
      return [{ role, index: c.index, toSI }];
    });
    if (!this.clock && !TO_SI[this.time.unit]) throw new LogRefused(`"${this.time.unit}" is no unit of time.`);
  }

  push(text: string): LogProgress {
    this.characters += text.length;
    const all = this.rest + text;
    let from = 0;
    for (;;) {
      const end = all.indexOf('\n', from);
      if (end < 0) break;
      this.line(all.slice(from, all.charCodeAt(end - 1) === 13 ? end - 1 : end));
      from = end + 1;
    }
    this.rest = all.slice(from);
    return { characters: this.characters, rows: this.row };
  }

  private line(line: string): void {
    if (this.headLeft > 0) {
      this.headLeft--;
      return;
    }
    if (line.trim() === '') return;
    this.row++;
    const cells = cellsOf(line, this.layout.separator);
    const seconds = this.secondsOf(cells);
    if (seconds === null) {
      this.unreadable++;
      this.firstUnreadable ??= this.row;
      return;
    }
    if (seconds < this.last)
      throw new LogRefused(
        `The log runs backwards at row ${this.row}: ${seconds.toFixed(1)} s comes after ${this.last.toFixed(1)} s. Two logs in one file, or a clock that was set?`,
      );
    this.last = seconds;
    this.times.push(seconds);
    for (const { role, index, toSI } of this.read) {
      const x = this.numberOf(cells[index]);
      this.figures.get(role)!.push(Number.isNaN(x) ? x : toSI(x));
    }
  }

  private numberOf(cell: string | undefined): number {
    if (cell === undefined) return Number.NaN;
    const text = cell.trim();
    if (text === '') return Number.NaN;
    return Number(this.layout.decimalComma ? text.replace(',', '.') : text);
  }

  private secondsOf(cells: readonly string[]): number | null {
    const cell = cells[this.time.index];
    if (!this.clock) {
      const x = this.numberOf(cell);
      return Number.isFinite(x) ? TO_SI[this.time.unit](x) : null;
    }
    const seconds = clockSeconds(cell ?? '');
    if (seconds === null) return null;
    const date = this.dateColumn < 0 ? null : dateOf((cells[this.dateColumn] ?? '').trim());
    if (date !== null) return date * DAY + seconds;
    // Only a clock without a date starts again at midnight.
    if (seconds + this.days * DAY < this.last - MIDNIGHT) this.days++;
    return seconds + this.days * DAY;
  }

  /** @throws LogRefused when it holds too little. */
  done(): Log {
    if (this.rest.trim() !== '') this.line(this.rest.replace(/\r$/, ''));
    this.rest = '';
    const time = this.times.done();
    if (time.length < 2) throw new LogRefused('The log holds fewer than two rows whose time can be read.');
    const start = time[0];
    for (let i = 0; i < time.length; i++) time[i] -= start;
    const step = usualStep(time);
    const of = (role: Figures) => this.figures.get(role)?.done() ?? null;
    return {
      time,
      current: of('current'),
      conductor: of('conductor'),
      surface: of('surface'),
      ambient: of('ambient'),
      drop: of('drop'),
      unreadable: { rows: this.unreadable, first: this.firstUnreadable },
      gaps: gapsIn(time, step),
      step,
    };
  }
}

function usualStep(time: Float64Array): number {
  // A thousand steps spread over the log tell the usual one.
  const every = Math.max(1, Math.floor(time.length / 1000));
  const steps: number[] = [];
  for (let i = 1; i < time.length; i += every) steps.push(time[i] - time[i - 1]);
  return steps.sort((a, b) => a - b)[steps.length >> 1];
}

function gapsIn(time: Float64Array, step: number): { from: number; to: number }[] {
  const gaps: { from: number; to: number }[] = [];
  if (!(step > 0)) return gaps;
  for (let i = 1; i < time.length; i++)
    if (time[i] - time[i - 1] > GAP * step) gaps.push({ from: time[i - 1], to: time[i] });
  return gaps;
}

/** Reads pieces of text to the end, telling how far it is after each. Throws LogRefused. */
export function readLog(
  pieces: Iterable<string>,
  layout: LogLayout,
  columns: readonly LogColumn[],
  onProgress: (progress: LogProgress) => void = () => {},
): Log {
  const reader = new LogReader(layout, columns);
  for (const piece of pieces) onProgress(reader.push(piece));
  return reader.done();
}
