/** A heating test read by hand: kept on this device, so that a reload in the middle loses no reading and no stop. */
import { computed, signal } from '@preact/signals';
import { folded, say } from '../journal/journal.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { behind } from './logShift.ts';
import { typedNumber } from './runAnswers.ts';

export interface HeatingRun {
  specimen: string;
  current: string;
  ambient: string;
  /** °C at which it is stopped, chosen before the start. */
  stop: string;
  /** ms of the clock when the current came on; empty before. */
  started: string;
  /** s by which its times stand behind an earlier test of the piece. */
  shift: string;
}

const FRESH: HeatingRun = { specimen: '', current: '', ambient: '', stop: '', started: '', shift: '0' };

/** By trial, as JSON. */
const kept = keptSignal<Record<string, string>>('cupel.amps.heat', {}, isTexts);

export const heatTrial = signal('');

export const heating = computed<HeatingRun>(() => {
  try {
    const read = JSON.parse(kept.value[heatTrial.value] ?? '{}') as unknown;
    return isTexts(read) ? { ...FRESH, ...read } : FRESH;
  } catch {
    return FRESH;
  }
});

export function setHeating(part: Partial<HeatingRun>): void {
  kept.value = { ...kept.peek(), [heatTrial.peek()]: JSON.stringify({ ...heating.peek(), ...part }) };
}

/** What is missing before the current may come on, in words; empty when nothing. */
export function missingBefore({ specimen, current, stop, ambient }: HeatingRun): string[] {
  const missing: string[] = [];
  if (specimen === '') missing.push('which piece is under current');
  if (!(typedNumber(current) > 0)) missing.push('a current above 0 A');
  const at = typedNumber(stop);
  if (!Number.isFinite(at)) missing.push('the temperature at which you stop');
  else if (at <= (Number.isFinite(typedNumber(ambient)) ? typedNumber(ambient) : 0))
    missing.push('a stop temperature above the surroundings');
  else if (at > MOST_STOP) missing.push(`a stop temperature of ${MOST_STOP} °C at most`);
  return missing;
}

/** °C: beyond this most jackets soften or smoke. Common practice, no source. */
const MOST_STOP = 150;

/** The current is on from now: times count from here, behind what is on record of the piece. */
export function switchOn(): void {
  const { specimen } = heating.peek();
  const earlier = (folded.peek()?.currents ?? []).filter((row) => row.specimen === specimen);
  const { shift } = behind(
    [{ time_s: '0' }],
    earlier.map((row) => Number(row.row.time_s)),
  );
  setHeating({ started: String(Date.now()), shift: String(shift) });
}

export const isAtStop = (run: HeatingRun, celsius: number): boolean => celsius >= typedNumber(run.stop);

/**
 * Keeps one reading of the thermometer with the seconds since the current came on.
 *
 * @throws Error when it is no temperature, or this device refuses to keep it
 */
export async function keepTemperature(typed: string): Promise<{ celsius: number; stop: boolean }> {
  const run = heating.peek();
  const celsius = typedNumber(typed);
  if (!Number.isFinite(celsius)) throw new Error(`Found "${typed}"; expected a temperature in °C.`);
  const seconds = (Date.now() - Number(run.started)) / 1000;
  await say('current', {
    specimen: run.specimen,
    time_s: (Number(run.shift) + seconds).toFixed(1),
    current_A: String(typedNumber(run.current)),
    conductor_C: String(celsius),
    ambient_C: Number.isFinite(typedNumber(run.ambient)) ? String(typedNumber(run.ambient)) : '',
  });
  return { celsius, stop: isAtStop(run, celsius) };
}
