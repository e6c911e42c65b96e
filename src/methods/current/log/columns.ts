import { clockSeconds, dateOf } from './clock.ts';

/** What a column of a log holds. */
export type LogRole = 'time' | 'current' | 'conductor' | 'surface' | 'ambient' | 'drop' | 'unused';

/** Units that a column may be in. `clock`: a time of day or a date with one. */
export const LOG_UNITS = {
  time: ['s', 'min', 'h', 'ms', 'clock'],
  current: ['A', 'mA'],
  conductor: ['°C', '°F', 'K'],
  surface: ['°C', '°F', 'K'],
  ambient: ['°C', '°F', 'K'],
  drop: ['V', 'mV', 'µV'],
  unused: [''],
} as const satisfies Record<LogRole, readonly string[]>;

/** A column as it is to be read. */
export interface LogColumn {
  index: number;
  role: LogRole;
  unit: string;
}

/** How the text of a log is laid out. */
export interface LogLayout {
  separator: ',' | ';' | '\t';
  decimalComma: boolean;
  /** Lines above the first row of figures, the names of the columns last among them. */
  headLines: number;
  names: string[];
}

/** A log before it is read: its layout, its first rows, and a guess of what its columns hold. The person may change the guess. */
export interface LogPreview {
  layout: LogLayout;
  rows: string[][];
  columns: (LogColumn & { name: string /** Why it was guessed so, in words. */; why: string })[];
  /** What is missing before it can be read, in words. */
  missing: string[];
}

const PREVIEW_ROWS = 8;
const MOST_HEAD_LINES = 60;

export function cellsOf(line: string, separator: string): string[] {
  if (!line.includes('"')) return line.split(separator);
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const c = line[i];
    if (c === '"') {
      if (quoted && line[i + 1] === '"') {
        cell += '"';
        i++;
      } else quoted = !quoted;
    } else if (c === separator && !quoted) {
      cells.push(cell);
      cell = '';
    } else cell += c;
  }
  return [...cells, cell];
}

const plainNumber = (text: string, comma: boolean): boolean =>
  (comma ? /^\s*[-+]?\d+(?:,\d+)?(?:[eE][-+]?\d+)?\s*$/ : /^\s*[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?\s*$/).test(
    text,
  );
const timely = (text: string): boolean => clockSeconds(text.trim()) !== null || dateOf(text.trim()) !== null;

function figuresIn(cells: readonly string[], comma: boolean): number {
  return cells.filter((c) => plainNumber(c, comma) || timely(c)).length;
}

/** The layout of a log from its first lines; null when no line of it looks like figures. */
export function layoutOf(lines: readonly string[]): LogLayout | null {
  let best: { layout: LogLayout; score: number } | null = null;
  for (const separator of ['\t', ';', ','] as const)
    for (const decimalComma of separator === ',' ? [false] : [false, true]) {
      const parsed = lines.slice(0, MOST_HEAD_LINES).map((line) => cellsOf(line, separator));
      const first = parsed.findIndex((cells) => cells.length > 1 && figuresIn(cells, decimalComma) >= 2);
      if (first < 0) continue;
      const rows = parsed.slice(first, first + PREVIEW_ROWS);
      const score = rows.reduce((sum, cells) => sum + figuresIn(cells, decimalComma), 0);
      const head = first > 0 ? parsed[first - 1].map((name) => name.trim()) : [];
      const names = rows[0].map((_, i) => head[i] || `column ${i + 1}`);
      if (!best || score > best.score) best = { layout: { separator, decimalComma, headLines: first, names }, score };
    }
  return best?.layout ?? null;
}

const UNIT_WORDS: readonly [RegExp, string][] = [
  [/°\s*F|\bdeg\s*F\b|(?:^|[([_\s])F[)\]]?$|fahrenheit/i, '°F'],
  [/°\s*C|\bdeg\s*C\b|(?:^|[([_\s])C[)\]]?$|celsius/i, '°C'],
  [/kelvin|(?:^|[([_\s])K[)\]]?$/, 'K'],
  [/\bms\b|millisec/i, 'ms'],
  [/\bmin(ute)?s?\b|(?:^|[([_\s])min[)\]]?$/i, 'min'],
  [/\bhours?\b|\bhrs?\b|(?:^|[([_\s])h[)\]]?$/i, 'h'],
  [/\bsec(ond)?s?\b|(?:^|[([_\s])s[)\]]?$/i, 's'],
  [/µV|uV|microvolt/i, 'µV'],
  [/mV|millivolt/i, 'mV'],
  [/\bvolts?\b|(?:^|[([_\s])V[)\]]?$/i, 'V'],
  [/\bmA\b|milliamp/, 'mA'],
  [/\bamps?\b|amper|(?:^|[([_\s])A[)\]]?$/i, 'A'],
];

const ROLE_WORDS: readonly [RegExp, Exclude<LogRole, 'unused'>][] = [
  [/time|clock|elapsed|date|seconds|timestamp|zeit|uhr/i, 'time'],
  [/ambient|room|air|surround|t_?amb|raum|umgebung/i, 'ambient'],
  [/surface|jacket|outer|skin|oberfl/i, 'surface'],
  [/conductor|copper|core|strand|wire|leiter|kupfer/i, 'conductor'],
  [/current|\bamps?\b|shunt|strom/i, 'current'],
  [/drop|volt|spannung/i, 'drop'],
  [/temp|thermo|^t\d|channel|ch\s?\d/i, 'conductor'],
];

const unitIn = (name: string): string | null => UNIT_WORDS.find(([words]) => words.test(name))?.[1] ?? null;

function guess(name: string, index: number, samples: readonly string[], comma: boolean, taken: ReadonlySet<LogRole>) {
  const unit = unitIn(name);
  const isClock =
    samples.every((s) => timely(s) && !plainNumber(s, comma)) || samples.every((s) => clockSeconds(s) !== null);
  if (isClock && !taken.has('time')) return { index, role: 'time' as const, unit: 'clock', why: 'its cells are times' };
  const byName = ROLE_WORDS.find(([words, role]) => words.test(name) && !taken.has(role))?.[1];
  const byUnit = (Object.keys(LOG_UNITS) as LogRole[]).find(
    (role) => unit !== null && !taken.has(role) && (LOG_UNITS[role] as readonly string[]).includes(unit),
  );
  const role = byName ?? byUnit ?? 'unused';
  const units = LOG_UNITS[role] as readonly string[];
  return {
    index,
    role,
    unit: unit !== null && units.includes(unit) ? unit : units[0],
    why: byName ? `it is called "${name}"` : byUnit ? `its unit is ${unit}` : 'nothing in its name says what it holds',
  };
}

/** Preview of a log from its first lines: layout, first rows, and what its columns seem to hold. null when it holds no figures. */
export function previewLog(beginning: string): LogPreview | null {
  const lines = beginning.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const layout = layoutOf(lines);
  if (layout === null) return null;
  const rows = lines
    .slice(layout.headLines, layout.headLines + PREVIEW_ROWS)
    .filter((line) => line.trim() !== '')
    .map((line) => cellsOf(line, layout.separator).map((cell) => cell.trim()));
  const taken = new Set<LogRole>();
  const columns = layout.names.map((name, index) => {
    const samples = rows.map((row) => row[index] ?? '').filter((cell) => cell !== '');
    const guessed = samples.length
      ? guess(name, index, samples, layout.decimalComma, taken)
      : { index, role: 'unused' as const, unit: '', why: 'it is empty' };
    if (guessed.role !== 'unused') taken.add(guessed.role);
    return { ...guessed, name };
  });
  return { layout, rows, columns, missing: missingOf(columns) };
}

/** What a log must have: when, and at least one temperature of the cable. */
export function missingOf(columns: readonly LogColumn[]): string[] {
  const has = (role: LogRole) => columns.some((c) => c.role === role);
  const missing: string[] = [];
  if (!has('time')) missing.push('no column holds the time');
  if (!has('conductor') && !has('surface')) missing.push('no column holds a temperature of the cable');
  return missing;
}
