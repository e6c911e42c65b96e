import { cannotBeToldFrom, cleanCutBands } from '../../methods/flex/pairs/bands.ts';
import { normalCdf } from '../../numerics/distributions.ts';
import { TWENTY_CELSIUS, ZERO_CELSIUS } from '../../units/dimension.ts';
import type { FlexCable } from '../shapes/flex.ts';
import { groupedByTemperature, rangeOf } from './atTemperature.ts';
import type { DroopResult } from './droops.ts';
import { type LnFigure, measuredOfLn, sdOf, together, weighted } from './lnFigure.ts';
import type { PushResult } from './pushes.ts';

/** Two temperatures at least this far apart tell how much a cable stiffens in the cold, K. Common practice, no source. */
const COLD_APART = 8;
const ROUNDING = 1e-6;

/** A stiffness at one temperature by one method. */
export interface StiffnessAt {
  method: 'droop' | 'push';
  figure: LnFigure;
  /** K; null when not noted. */
  temperature: number | null;
  /** Coldest and warmest that it was read at, °C; null when not noted. */
  range: [number, number] | null;
  condition: string | undefined;
  /** Of pushes 'first push', 'worked in', or '' where the runs do not say, or say both; null for droops. */
  state: string | null;
  /** Variance that the clamp's edge adds where cables are compared: each was clamped anew. */
  edge: number;
}

interface Single {
  figure: LnFigure;
  edge: number;
  temperature: number | null;
  range: [number, number] | null;
  condition: string | undefined;
  state: string | null;
}

/** Results brought together by temperature. */
function byTemperature(singles: readonly Single[], method: StiffnessAt['method']): StiffnessAt[] {
  const groups = groupedByTemperature(singles);
  return groups.map((group) => ({
    method,
    figure: together(group.map((s) => s.figure)),
    temperature:
      group[0].temperature === null ? null : group.reduce((sum, s) => sum + s.temperature! / group.length, 0),
    range: rangeOf(group.flatMap((s) => s.range ?? [])),
    condition: group.find((s) => s.condition)?.condition,
    state: group.every((s) => s.state === group[0].state) ? group[0].state : '',
    edge: group.reduce((sum, s) => sum + s.edge, 0) / group.length ** 2,
  }));
}

/** All stiffnesses of a cable: by droop, and by push. Of pushes the worked-in ones where there are any, else all. */
export function stiffnessesOf(droops: readonly DroopResult[], pushes: readonly PushResult[]): StiffnessAt[] {
  const drooped = droops.flatMap(({ shown, stiffness, temperature, weight, clampEdge }) =>
    stiffness
      ? [
          {
            figure: stiffness,
            temperature,
            range: shown.temperature_range_C,
            condition: weight?.condition,
            state: null,
            edge: clampEdge ** 2 / 3,
          },
        ]
      : [],
  );
  const worked = pushes.filter((p) => p.shown.state === 'worked in');
  const pushed = (worked.length > 0 ? worked : pushes).flatMap(({ shown, stiffness, temperature }) =>
    stiffness
      ? [
          {
            figure: stiffness,
            temperature,
            range: shown.temperature_range_C,
            condition: undefined,
            state: shown.state,
            edge: 0,
          },
        ]
      : [],
  );
  return [...byTemperature(drooped, 'droop'), ...byTemperature(pushed, 'push')];
}

/** The one to show first: by droop if there is one, at the temperature nearest to the trial's. */
export function headlineOf(all: readonly StiffnessAt[], target: number | null): StiffnessAt | null {
  const method = all.some((s) => s.method === 'droop') ? 'droop' : 'push';
  const off = ({ temperature }: StiffnessAt) =>
    temperature === null ? Number.POSITIVE_INFINITY : Math.abs(temperature - (target ?? TWENTY_CELSIUS));
  const [first = null] = all.filter((s) => s.method === method).sort((a, b) => off(a) - off(b));
  return first;
}

const degrees = (kelvin: number) => `${Math.round(kelvin - ZERO_CELSIUS)} °C`;

/** Stiffness cold over stiffness warm by one method, from the two temperatures farthest apart; null when they are too near. */
export function coldStiffening(all: readonly StiffnessAt[], level: number): FlexCable['cold_stiffening'] {
  for (const method of ['droop', 'push'] as const) {
    const noted = all
      .filter((s) => s.method === method && s.temperature !== null)
      .sort((a, b) => a.temperature! - b.temperature!);
    const [cold, warm] = [noted[0], noted[noted.length - 1]];
    if (!cold || !warm || warm.temperature! - cold.temperature! < COLD_APART - ROUNDING) continue;
    // Tools and weight are the same at both, so what they err by cancels as far as it can.
    const ratio = weighted([
      { figure: cold.figure, share: 1 },
      { figure: warm.figure, share: -1 },
    ]);
    const measured = measuredOfLn(ratio, '1', level);
    return {
      ratio: measured,
      cold_C: cold.temperature! - ZERO_CELSIUS,
      warm_C: warm.temperature! - ZERO_CELSIUS,
      text: `${measured.value.toFixed(2)} times as stiff at ${degrees(cold.temperature!)} as at ${degrees(warm.temperature!)}.`,
    };
  }
  return null;
}

/**
 * The figure as it is compared with other cables': with the clamp's edge as an error of its own, uniform within a quarter of the
 * diameter. What a rule does to all cables cancels in a comparison; where each piece left its clamp does not.
 */
export function compared({ figure, edge }: StiffnessAt): LnFigure {
  return { ...figure, own: figure.own + edge };
}

/** Bands of stiffness among cables measured by one method, the easiest to bend in band 1. */
export function stiffnessBands(figures: readonly LnFigure[]): { band: number[]; near: number[][] } {
  const n = figures.length;
  const chances = new Float64Array(n * n).fill(0.5);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      if (i === j) continue;
      const difference = weighted([
        { figure: figures[j], share: 1 },
        { figure: figures[i], share: -1 },
      ]);
      chances[i * n + j] = normalCdf(difference.ln / Math.max(sdOf(difference), 1e-12));
    }
  const { band } = cleanCutBands(
    figures.map((f) => -f.ln),
    chances,
  );
  return { band, near: cannotBeToldFrom(chances, n) };
}
