import { clockSeconds } from '../log/clock.ts';
import { type Transient, transient } from '../thermal/transient.ts';
import { currentOfPower, surroundingsAt } from './flow.ts';
import { ohmsAt, pathOhms } from './path.ts';
import type { RunCable, RunQuestion } from './question.ts';

/** A load that changes: each amount, A or W as the question's load is, holds for some seconds. */
export interface ProfileHold {
  seconds: number;
  amount: number;
}

export interface ProfileAnswer {
  transient: Transient;
  /** K: the hottest conductor, when (s), and its distance below the rating. */
  peak: number;
  peakAt: number;
  margin: number;
  /** V lost at the largest amount, and J lost in all. */
  lost: number;
  energy: number;
}

/** A profile that cannot be read, in one sentence. */
export class ProfileRefused extends Error {
  override name = 'ProfileRefused';
}

const MOST_HOLDS = 20_000;

/**
 * Reads a pasted profile: lines of a time and an amount, each holding until the next line's time. Times in seconds or as
 * clocks; commas, semicolons, tabs or blanks between. The last line holds as long as the one before it.
 *
 * @throws ProfileRefused naming the line.
 */
export function profileFromText(text: string): ProfileHold[] {
  const rows: { time: number; amount: number }[] = [];
  text.split(/\r\n|\n|\r/).forEach((line, at) => {
    if (line.trim() === '') return;
    const cells = line
      .trim()
      .split(/[;,\t]|\s+/)
      .filter((cell) => cell !== '');
    const time = /:/.test(cells[0] ?? '') ? clockSeconds(cells[0]) : Number(cells[0]);
    const amount = Number(cells[1]);
    if (cells.length < 2 || time === null || Number.isNaN(time) || Number.isNaN(amount)) {
      // A line of names above the figures.
      if (rows.length === 0 && at === 0) return;
      throw new ProfileRefused(
        `Line ${at + 1} of the profile is "${line.trim().slice(0, 40)}"; a time and an amount were expected.`,
      );
    }
    const before = rows[rows.length - 1];
    if (before && !(time > before.time))
      throw new ProfileRefused(`The profile runs backwards at line ${at + 1}: ${time} s after ${before.time} s.`);
    if (amount < 0)
      throw new ProfileRefused(`Line ${at + 1} of the profile has the amount ${amount}; a load is not negative.`);
    rows.push({ time, amount });
  });
  if (rows.length < 2) throw new ProfileRefused('A profile needs two lines with a time and an amount.');
  if (rows.length > MOST_HOLDS)
    throw new ProfileRefused(
      `The profile has ${rows.length} lines; at most ${MOST_HOLDS}. Take means over longer spans.`,
    );
  return rows.map(({ time, amount }, i) => ({
    amount,
    seconds: i < rows.length - 1 ? rows[i + 1].time - time : time - rows[i - 1].time,
  }));
}

/**
 * A changing load through a cable from rest. Currents of a load in watts are those at the cable's rated temperature, where
 * they are largest.
 *
 * @throws RangeError as the transient model, or when a load in watts asks for more than can come through.
 */
export function profileAnswer(q: RunQuestion, cable: RunCable, holds: readonly ProfileHold[]): ProfileAnswer {
  const ohms = ohmsAt(pathOhms(q, cable, 'value', 1, null), cable.rating);
  const volts = q.supply.resting;
  const through = ohms + q.supply.ohms.value;
  const currents = holds.map(({ amount }) => {
    if (q.load.kind === 'amps') return amount;
    const current = currentOfPower(amount / q.load.efficiency, volts, through);
    if (Number.isNaN(current))
      throw new RangeError(`${amount} W cannot come through this run: its volts would fall to half and below`);
    return current;
  });
  const found = transient(
    cable.heated,
    holds.map(({ seconds }, i) => ({ seconds, current: currents[i] })),
    surroundingsAt(q, cable, 'value', 1),
  );
  return {
    transient: found,
    peak: found.peak,
    peakAt: found.peakAt,
    margin: cable.rating - found.peak,
    lost: Math.max(...currents) * ohms,
    energy: currents.reduce((sum, i, k) => sum + i * i * ohms * holds[k].seconds, 0),
  };
}
