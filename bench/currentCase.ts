/** What the benchmarks of current measure: a steady solve, an hour of a bundle, a redraw of a run check, a log of a million rows. */
import { heatingsOf } from '../src/methods/current/heating/heatings.ts';
import { previewLog } from '../src/methods/current/log/columns.ts';
import { type LogProgress, readLog } from '../src/methods/current/log/readLog.ts';
import { conductorMetal, USUAL_JACKET } from '../src/methods/current/materials.ts';
import { nominalCable, nominalSizes } from '../src/methods/current/runCheck/nominal.ts';
import type { RunQuestion } from '../src/methods/current/runCheck/question.ts';
import { runCheck } from '../src/methods/current/runCheck/runCheck.ts';
import { inOpenAir } from '../src/methods/current/thermal/run.ts';
import { steadyTemperature } from '../src/methods/current/thermal/steady.ts';
import { transient } from '../src/methods/current/thermal/transient.ts';

const CABLE = {
  metal: conductorMetal('copper'),
  resistance20: 0.53e-3,
  metalVolume: 34.8e-6,
  bundleDiameter: 8.4e-3,
  outerDiameter: 12.3e-3,
  jacket: USUAL_JACKET,
};
const AIR = inOpenAir(303.15);

/** So many steady solves at different currents; the sum of the temperatures, so that none is left out. */
export function steadySolves(count: number): number {
  let sum = 0;
  for (let i = 0; i < count; i++) sum += steadyTemperature(CABLE, 60 + (100 * i) / count, AIR)!.conductor;
  return sum;
}

/** Hottest conductor of seven touching cables after an hour, K. */
export const hourOfSeven = (): number => transient(CABLE, [{ current: 80, seconds: 3600 }], { ...AIR, bundle: 7 }).peak;

const MEASURED = Array.from({ length: 12 }, (_, i) => ({
  ...nominalCable(`c${i}`, `Cable ${i}`, (16 + 6 * i) * 1e-6, 353.15),
  measured: true,
}));
const NOMINAL = nominalSizes('awg', 353.15);

/** One redraw: twelve measured cables and the nominal sizes, with their curves, at a length that a slider gives. */
export function redraw(length: number): number {
  const question: RunQuestion = {
    supply: { resting: 12.6, charging: 14.2, ohms: { value: 0.005, low: 0.002, high: 0.008 }, direct: true },
    load: { kind: 'watts', steady: 600, peak: { amount: 1200, share: 0.2, seconds: 30 }, efficiency: 0.85 },
    length,
    back: { kind: 'same cable', length },
    joints: [{ name: 'lug', count: 4, ohms: 1e-4 }],
    surroundings: { ambient: 313.15, bundle: 1, layer: null },
    allowedDrop: 0.06,
    measured: null,
  };
  return runCheck(question, MEASURED, NOMINAL).answers.length;
}

/** A logger's file of so many rows: rest, then one heating of five time constants. */
export function logText(rows: number): string {
  const lines = ['Time,Current (A),Core (C),Room (C),Drop (mV)'];
  const seconds = 3000 / rows;
  for (let i = 0; i < rows; i++) {
    const t = i * seconds - 60;
    const rise = t <= 0 ? 0 : 30 * (1 - Math.exp(-t / 560));
    const amps = t <= 0 ? 0 : 150;
    lines.push(
      `${(i * seconds).toFixed(4)},${amps},${(20 + rise).toFixed(2)},20.0,${(amps * 0.21 * (1 + 0.0039 * rise)).toFixed(3)}`,
    );
  }
  return `${lines.join('\n')}\n`;
}

/** Reads a log in pieces of 64 Ki characters and fits its heating; the steady rise, K. */
export function readAndFit(text: string, onProgress: (progress: LogProgress) => void = () => {}): number {
  const preview = previewLog(text.slice(0, 65_536))!;
  function* pieces() {
    for (let at = 0; at < text.length; at += 65_536) yield text.slice(at, at + 65_536);
  }
  const log = readLog(pieces(), preview.layout, preview.columns, onProgress);
  const [found] = heatingsOf({ ...log, current: log.current! }, conductorMetal('copper'));
  if ('refused' in found.result) throw new Error(`the log was refused: ${found.result.refused}`);
  return found.result.steadyRise;
}
