import { median } from '../numerics/describe.ts';
import { ZERO_CELSIUS } from '../units/dimension.ts';
import { quantityHead } from './plainWords.ts';
import type { Reading, Remark, Trial } from './trial.ts';

/** From this distance on, K, the pieces were not at one temperature. */
const APART = 3;
/** Decimal fractions in °C do not survive the way into kelvin to the last digit. */
const ROUNDING = 1e-6;

const celsius = (kelvin: number): string => `${Number((kelvin - ZERO_CELSIUS).toFixed(1))} °C`;

/** Quantities whose temperatures lie so far apart that one of them can be far from the middle; usually none. */
function quantitiesApart(readings: readonly Reading[]): Set<string> {
  const spans = new Map<string, { least: number; most: number }>();
  for (const { standing, temperature, quantity } of readings) {
    if (standing !== 'counted' || temperature === null) continue;
    const span = spans.get(quantity);
    if (!span) spans.set(quantity, { least: temperature, most: temperature });
    else if (temperature < span.least) span.least = temperature;
    else if (temperature > span.most) span.most = temperature;
  }
  return new Set(
    [...spans].flatMap(([quantity, { least, most }]) => (most - least < APART - ROUNDING ? [] : [quantity])),
  );
}

/** Readings of one quantity taken at another temperature than the rest of them: one remark for each cable. */
export function remarksOnTemperatures(trial: Trial): Remark[] {
  const spread = quantitiesApart(trial.readings);
  if (spread.size === 0) return [];
  const byQuantity = new Map<string, Reading[]>();
  for (const reading of trial.readings) {
    if (reading.standing !== 'counted' || reading.temperature === null || !spread.has(reading.quantity)) continue;
    const group = byQuantity.get(reading.quantity);
    if (group) group.push(reading);
    else byQuantity.set(reading.quantity, [reading]);
  }
  return [...byQuantity].flatMap(([quantity, readings]) => apartFromFellows(quantity, readings));
}

function apartFromFellows(quantity: string, readings: readonly Reading[]): Remark[] {
  if (readings.length < 2) return [];
  const middle = median(readings.map((reading) => reading.temperature!));
  const byCable = new Map<string, Reading[]>();
  for (const reading of readings) {
    if (Math.abs(reading.temperature! - middle) < APART - ROUNDING) continue;
    byCable.set(reading.cable, [...(byCable.get(reading.cable) ?? []), reading]);
  }
  return [...byCable].map(([cable, apart]) => {
    const found = [...new Set(apart.map((reading) => celsius(reading.temperature!)))].join(', ');
    return {
      code: 'temperature-apart',
      cable: cable || null,
      readings: apart.map((reading) => reading.reading),
      text: `${quantityHead(quantity)} was read at ${found}, most others at about ${celsius(middle)}: let all pieces come to one temperature, or check what was typed.`,
    };
  });
}
