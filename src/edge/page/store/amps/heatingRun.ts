/** A heating test read by hand: kept on this device, so that a reload in the middle loses no reading and no stop. */
import { computed, signal } from '@preact/signals';
import { folded, say } from '../journal/journal.ts';
import { isTexts, keptSignal } from '../kept.ts';
import { type HeatingRun, isAtStop } from './heatingStop.ts';
import { behind } from './logShift.ts';
import { typedNumber } from './typedNumber.ts';

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
