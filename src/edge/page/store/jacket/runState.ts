/** One endurance test as it is being run on this device: what was set up, and how far the piece in hand has come. Pure. */
import type { Protocol } from '../../../../methods/jacket/protocols/protocol.ts';

/**
 * How an amount comes about: strokes counted here, the clock run here, a figure read off a tool, or one exposure that is the same
 * for all pieces.
 */
export type Way = 'strokes' | 'timer' | 'typed' | 'once';

export interface Run {
  /** As it will be listed. */
  test: string;
  unit: string;
  way: Way;
  /** The one exposure of a test that is passed or not, as typed. */
  exposure: string;
  stress: string;
  stressUnit: string;
  /** Looked at only every so much; blank: all the time. */
  every: string;
  /** Where the test is ended; blank: none. */
  stopAt: string;
  /** Temperature of the pieces in this test, as typed; blank until somebody reads it. */
  temperature: string;
  /** `planned`: the hours of an exposure are known otherwise than by the clock here. */
  hoursKnown: string;
  /** The set-up is done and pieces are taken. */
  begun: boolean;
  /** Chosen by hand; empty: the next in order. */
  specimen: string;
  /** Strokes added, in order, so that they can be taken back. */
  steps: number[];
  /** Strokes of steps no longer held one by one. */
  counted: number;
  /** Milliseconds since 1970 when the clock was started; 0 while it stands. */
  startedAt: number;
  /** Milliseconds that it ran before. */
  ran: number;
}

/** Steps held one by one; older ones are only counted. */
const MOST_STEPS = 100;

const SECOND = 1000;
const HOUR = 3_600_000;

/** A test as it is set up at first: by its protocol, or one of one's own. */
export function freshRun(protocol: Protocol | null): Run {
  const way: Way =
    protocol === null
      ? 'strokes'
      : protocol.kind === 'passed'
        ? 'once'
        : protocol.counter === null
          ? 'typed'
          : protocol.counter;
  return {
    test: protocol?.name ?? '',
    unit: protocol?.unit ?? 'strokes',
    way,
    exposure: way === 'once' && protocol?.unit === 'bends' ? '1' : '',
    stress: '',
    stressUnit: protocol?.stress?.unit ?? '',
    every: '',
    stopAt: '',
    temperature: '',
    hoursKnown: '',
    begun: false,
    specimen: '',
    ...NOTHING_COUNTED,
  };
}

const NOTHING_COUNTED = { steps: [] as number[], counted: 0, startedAt: 0, ran: 0 };

export const strokes = ({ steps, counted }: Run): number => counted + steps.reduce((sum, n) => sum + n, 0);

/** Milliseconds on the clock. */
export const elapsed = ({ startedAt, ran }: Run, now: number): number =>
  ran + (startedAt === 0 ? 0 : Math.max(0, now - startedAt));

/** The clock in the unit of the test: seconds to a tenth, hours to a hundredth. */
export function clockAmount(run: Run, now: number): number {
  const ms = elapsed(run, now);
  return run.unit === 'h' ? Math.round((ms / HOUR) * 100) / 100 : Math.round((ms / SECOND) * 10) / 10;
}

/** Where the count ends; null where no end was fixed. */
export function endOf({ stopAt }: Run): number | null {
  const stop = Number(stopAt.replace(',', '.'));
  return stop > 0 ? stop : null;
}

/** So many of `n` strokes as there is room for before the end that was fixed. */
export function roomFor(run: Run, n: number): number {
  const end = endOf(run);
  return end === null ? n : Math.max(0, Math.min(n, end - strokes(run)));
}

export function addStrokes(run: Run, n: number): Run {
  const steps = [...run.steps, n];
  const over = steps.slice(0, Math.max(0, steps.length - MOST_STEPS)).reduce((sum, x) => sum + x, 0);
  return { ...run, steps: steps.slice(-MOST_STEPS), counted: run.counted + over };
}

/** Takes the last tap back; does nothing at none. */
export const takeBackStroke = (run: Run): Run => ({ ...run, steps: run.steps.slice(0, -1) });

export function toggleClock(run: Run, now: number): Run {
  return run.startedAt === 0 ? { ...run, startedAt: now } : { ...run, ran: elapsed(run, now), startedAt: 0 };
}

/** For the next piece. A clock that runs for all pieces of one exposure runs on. */
export function forNextPiece(run: Run): Run {
  return run.way === 'once' ? { ...run, specimen: '' } : { ...run, specimen: '', ...NOTHING_COUNTED };
}

/** The amount that was passed last at which the piece is to be looked at; null where it is watched all the time, or not yet. */
export function lookAt(run: Run, before: number): number | null {
  const every = Number(run.every);
  if (!(every > 0) || run.way !== 'strokes') return null;
  const now = strokes(run);
  const reached = Math.floor(now / every + 1e-9);
  return reached > Math.floor(before / every + 1e-9) ? reached * every : null;
}

/** Whether the amount has come to where the test is ended. */
export function atStop(run: Run, amount: number): boolean {
  const end = endOf(run);
  return end !== null && amount >= end;
}

/** A clock that ran for this share of the planned hours ran for them. Ours. */
const RAN_ITS_HOURS = 0.98;

/** How the hours of an exposure are known; null where the clock ran too short and nobody said that they are known otherwise. */
export function hoursBy(run: Run, now: number): 'clock' | 'planned' | null {
  const planned = Number(run.exposure.replace(',', '.'));
  if (clockAmount(run, now) >= RAN_ITS_HOURS * planned) return 'clock';
  return run.hoursKnown === 'planned' ? 'planned' : null;
}

/** What runs that were kept before had no word on. */
const SINCE: Partial<Run> = { temperature: '', hoursKnown: '' };

/** A run as it was kept; null for what is none. */
export function readRun(text: string | undefined): Run | null {
  try {
    const read = JSON.parse(text ?? 'null') as Run | null;
    if (typeof read !== 'object' || read === null) return null;
    const kept: Run = { ...SINCE, ...read };
    const usual: Record<string, unknown> = { ...freshRun(null) };
    const fits = Object.entries(usual).every(
      ([name, value]) => typeof (kept as unknown as Record<string, unknown>)[name] === typeof value,
    );
    const counts = fits && Array.isArray(kept.steps) && kept.steps.every((n) => Number.isFinite(n));
    return counts && ['strokes', 'timer', 'typed', 'once'].includes(kept.way) ? kept : null;
  } catch {
    return null;
  }
}
