import type { Fitting } from '../../trial/trial.ts';
import { capital } from '../../units/capital.ts';
import type { CableFindings, Measured } from '../schema.ts';

/**
 * Share of a barrel's bore that metal must about take for a crimp to close on it, when nothing else is stated, and how far
 * from it nothing is said. Common practice, no source: the maker of the lug says what fits it.
 */
export const LEAST_FILL = 0.4;
const NEAR_FILL = 0.05;
const CRIMPED = /lug|ferrule|terminal/i;

function fillWords(percent: number, fills: boolean | null): string {
  if (fills) return `metal takes ${percent} % of the bore`;
  const usual = `crimps commonly want about ${Math.round(100 * LEAST_FILL)} % (common practice, no source)`;
  return fills === null
    ? `metal takes ${percent} % of the bore, ${usual}: try it`
    : `metal takes only ${percent} % of the bore, ${usual}`;
}

function words(f: Fitting, enters: boolean | null, fills: boolean | null, fill: number | null): string {
  const bore = `${(f.bore * 1000).toFixed(1)} mm ${f.kind || 'fitting'}`;
  const parts: string[] = [];
  if (enters === null)
    parts.push(`whether the bundle enters the ${bore} needs its diameter: the smallest hole it passes`);
  else parts.push(enters ? `the bundle enters the ${bore}` : `the bundle is wider than the ${bore}`);
  if (fill !== null) parts.push(fillWords(Math.round(100 * fill), fills));
  if (f.tried) parts.push(`tried: ${f.tried}`);
  return `${capital(parts.join('; '))}.`;
}

/** Whether the cable enters each fitting and fills it enough, computed, with what was tried beside it. */
export function fitOf(
  cable: string,
  fittings: readonly Fitting[],
  bundle: Measured | null,
  area: Measured | null,
): CableFindings['fit'] {
  return fittings.map((f) => {
    const enters = bundle ? bundle.value / 1000 <= f.bore : null;
    const crimped = CRIMPED.test(f.kind);
    const fill = area && crimped && enters !== false ? (area.value * 1e-6) / ((Math.PI * f.bore * f.bore) / 4) : null;
    const fills = fill === null || Math.abs(fill - LEAST_FILL) < NEAR_FILL ? null : fill > LEAST_FILL;
    const tried = f.triedWith === null || f.triedWith === cable ? f.tried : null;
    return {
      fitting: f.fitting,
      kind: f.kind,
      bore_mm: f.bore * 1000,
      enters,
      fills,
      tried,
      text: words({ ...f, tried }, enters, fills, fill),
    };
  });
}
