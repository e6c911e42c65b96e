import type { Remark, Trial } from './trial.ts';
import { isOrdinaryMultimeter } from './usualLimits.ts';

/** Resistances read by two wires: of heavy cable they are mostly leads and contacts. One remark for each cable. */
export function remarksOnTools(trial: Trial): Remark[] {
  const multimeters = new Set(
    trial.instruments.filter((tool) => isOrdinaryMultimeter(tool.kind)).map((tool) => tool.instrument),
  );
  if (multimeters.size === 0) return [];
  const byCable = new Map<string, string[]>();
  for (const reading of trial.readings) {
    const twoWire = reading.instrument !== null && multimeters.has(reading.instrument);
    if (!twoWire || reading.quantity !== 'resistance' || reading.standing !== 'counted') continue;
    byCable.set(reading.cable, [...(byCable.get(reading.cable) ?? []), reading.reading]);
  }
  return [...byCable].map(([cable, readings]) => ({
    code: 'two-wire-meter',
    cable: cable || null,
    readings,
    text: 'An ordinary multimeter reads its own leads and contacts along with the cable, and those are larger; use a meter with four wires.',
  }));
}
