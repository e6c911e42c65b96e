import { cautionsFor, ESTIMATE_LINE } from '../../methods/current/cautions.ts';
import type { Trial } from '../../trial/trial.ts';
import type { CableReadings, TrialRows } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Warning } from '../schema.ts';
import type { Current, CurrentCable } from '../shapes/current.ts';
import { carryingOf, lossOf, speakingTest } from './carrying.ts';
import { fourWiresOf } from './fourWires.ts';
import { heatedCableOf } from './heatedCable.ts';
import { heatingTestsOf } from './heatingTests.ts';
import { currentSentence, currentWarnings } from './words.ts';

export interface CurrentFound {
  /** null when no resistance was read, no voltage with its current, and no log. */
  current: Current | null;
  warnings: Warning[];
}

/** Resistance under current, heating and carrying current of every cable of which something of that kind is known. */
export function currentOf(
  trial: Trial,
  rows: TrialRows,
  cables: readonly CableFindings[],
  { level }: { level: number },
): CurrentFound {
  const parts = rows.cables.map((readings, i) => cableOf(readings, cables[i], trial, rows, level));
  const shown = parts.flatMap((p) => p.shown ?? []);
  if (shown.length === 0) return { current: null, warnings: [] };
  const tested = shown.some((c) => c.heating_tests.length > 0);
  const clad = cables.some((c) => /aluminium/.test(c.metal_found ?? ''));
  const current: Current = {
    cables: shown,
    sentence: currentSentence(shown),
    estimate: ESTIMATE_LINE,
    cautions: cautionsFor(
      ...(shown.some((c) => c.four_wire.length > 0) ? (['four-wire'] as const) : []),
      ...(tested ? (['heating test'] as const) : []),
      'fuse',
      'terminals',
      ...(clad ? (['clad aluminium'] as const) : []),
    ),
  };
  return { current, warnings: [...parts.flatMap((p) => p.warnings), ...shown.flatMap(currentWarnings)] };
}

function cableOf(
  readings: CableReadings,
  found: CableFindings,
  trial: Trial,
  rows: TrialRows,
  level: number,
): { shown: CurrentCable | null; warnings: Warning[] } {
  const pieces = new Set(readings.specimens.map((s) => s.specimen));
  const four_wire = fourWiresOf(readings, found, rows.tools, level);
  const { tests, warnings } = heatingTestsOf(found, trial, pieces, rows.tools, level);
  const nothing = four_wire.length === 0 && tests.length === 0 && found.resistance_20C === null;
  if (nothing) return { shown: null, warnings };
  const speaking = speakingTest(tests);
  const { cable: heated, missing } = heatedCableOf(found);
  const { loss, warnings: notBelonging } = heated
    ? lossOf(heated, speaking, found.cable)
    : { loss: null, warnings: [] };
  const control = found.role === 'control';
  const shown: CurrentCable = {
    cable: found.cable,
    name: found.name,
    role: found.role,
    four_wire,
    heating_tests: tests.map((t) => t.shown),
    heating: speaking?.shown.steady_rise
      ? {
          specimen: speaking.shown.specimen,
          current_A: speaking.shown.current_A,
          steady_rise: speaking.shown.steady_rise,
          time_constant_s: speaking.shown.slowest_s!.value,
        }
      : null,
    carrying: heated && loss && !control ? carryingOf(heated, found, readings, loss, trial, level) : null,
    missing: control ? null : missing,
  };
  return { shown, warnings: [...warnings, ...notBelonging] };
}
