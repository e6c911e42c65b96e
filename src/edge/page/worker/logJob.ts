import { currentRowsOf } from '../../../findings/current/logRows.ts';
import { heatingsOf, impossibleInLog } from '../../../methods/current/heating/heatings.ts';
import { type Log, LogReader } from '../../../methods/current/log/readLog.ts';
import { conductorMetal } from '../../../methods/current/materials.ts';
import type { Jobs } from './jobs.ts';

/** Characters of the file between two words of progress. */
const PIECE = 1 << 20;

/**
 * Reads a logger's file to rows of currents, telling how many characters are done. What is impossible in it is refused in one
 * sentence, before anything of it is kept.
 *
 * @throws LogRefused, RangeError
 */
export function logJob(
  { text, layout, columns, stated, metal }: Jobs['log']['ask'],
  tell: (characters: number) => void,
): Jobs['log']['answer'] {
  const reader = new LogReader(layout, columns);
  for (let at = 0; at < text.length; at += PIECE) tell(reader.push(text.slice(at, at + PIECE)).characters);
  const log = reader.done();
  const whole = { ...log, current: log.current ?? new Float64Array(log.time.length).fill(stated.current ?? 0) };
  const wrong = impossibleInLog(whole, conductorMetal(metal));
  if (wrong !== null) throw new RangeError(wrong);
  const rows = currentRowsOf(log, stated);
  return { rows, readings: log.time.length, ...said(log), heatings: heatingsIn(rows, metal) };
}

const said = ({ unreadable, gaps, step, time }: Log) => ({
  unreadable,
  gaps: gaps.length,
  step,
  seconds: time[time.length - 1]! - time[0]!,
});

/** What the rows that would be kept say by themselves, so that somebody sees it before keeping them. */
function heatingsIn(rows: readonly Record<string, string>[], metal: string | null) {
  const column = (name: string, shift = 0) =>
    rows.some((row) => row[name] !== undefined)
      ? Float64Array.from(rows, (row) => (row[name] === undefined ? Number.NaN : Number(row[name]) + shift))
      : null;
  const log = {
    time: column('time_s') ?? new Float64Array(0),
    current: column('current_A') ?? new Float64Array(rows.length),
    conductor: column('conductor_C', ZERO),
    surface: column('surface_C', ZERO),
    ambient: column('ambient_C', ZERO),
    drop: column('drop_V'),
  };
  return heatingsOf(log, conductorMetal(metal)).map(({ segment, result }) => ({
    current: segment.current,
    steadyRise: 'refused' in result ? null : result.steadyRise,
    refused: 'refused' in result ? result.refused : null,
  }));
}

/** K at 0 °C. */
const ZERO = 273.15;
