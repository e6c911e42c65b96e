import { cautionsFor, ESTIMATE_LINE } from '../../methods/current/cautions.ts';
import type { Trial } from '../../trial/trial.ts';
import type { CableReadings, TrialRows } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Warning } from '../schema.ts';
import type { Current, CurrentCable } from '../shapes/current.ts';
import { carryingOf, type Loss, lossByFellows, lossByTest, speakingTest } from './carrying.ts';
import { fourWiresOf } from './fourWires.ts';
import { type Heated, heatedCableOf } from './heatedCable.ts';
import { heatingTestsOf, type TestResult } from './heatingTests.ts';
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
  const parts = rows.cables.map((readings, i) => testedOf(readings, cables[i], trial, rows, level));
  const fellows = lossByFellows(parts.flatMap((p) => p.loss ?? []));
  const shown = parts.flatMap((p) => shownOf(p, fellows, trial, level) ?? []);
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

/** One cable with its tests, before cables are looked at together. */
interface Tested {
  readings: CableReadings;
  found: CableFindings;
  fourWire: CurrentCable['four_wire'];
  tests: TestResult[];
  speaking: TestResult | null;
  heated: Heated;
  /** By its own test; null without one. */
  loss: Loss | null;
  warnings: Warning[];
}

function testedOf(readings: CableReadings, found: CableFindings, trial: Trial, rows: TrialRows, level: number): Tested {
  const pieces = new Set(readings.specimens.map((s) => s.specimen));
  const { tests, warnings } = heatingTestsOf(found, trial, pieces, rows.tools, level);
  const speaking = speakingTest(tests);
  const heated = heatedCableOf(found);
  const own = heated.cable ? lossByTest(heated.cable, speaking, found.cable) : { loss: null, warnings: [] };
  return {
    readings,
    found,
    fourWire: fourWiresOf(readings, found, rows.tools, level),
    tests,
    speaking,
    heated,
    loss: own.loss,
    warnings: [...warnings, ...own.warnings],
  };
}

/** null for a cable of which nothing of this kind is known. */
function shownOf(t: Tested, fellows: Loss, trial: Trial, level: number): CurrentCable | null {
  const { found, speaking, heated } = t;
  if (t.fourWire.length === 0 && t.tests.length === 0 && found.resistance_20C === null) return null;
  const control = found.role === 'control';
  return {
    cable: found.cable,
    name: found.name,
    role: found.role,
    four_wire: t.fourWire,
    heating_tests: t.tests.map((test) => test.shown),
    heating: speaking?.shown.steady_rise
      ? {
          specimen: speaking.shown.specimen,
          current_A: speaking.shown.current_A,
          steady_rise: speaking.shown.steady_rise,
          time_constant_s: speaking.shown.slowest_s!.value,
        }
      : null,
    carrying:
      heated.cable && !control ? carryingOf(heated.cable, found, t.readings, t.loss ?? fellows, trial, level) : null,
    missing: control ? null : heated.missing,
  };
}
