import type { RunCable } from '../../methods/current/runCheck/question.ts';
import { MODEL_LOSS_U } from '../../methods/current/thermal/calibrate.ts';
import { pricePerMetre } from '../../methods/decide/lengthToBuy.ts';
import type { Trial } from '../../trial/trial.ts';
import { GRAVITY } from '../../units/exactFactors.ts';
import { weightOf } from '../flex/weight.ts';
import { priceOf } from '../plan/prices.ts';
import type { CableReadings, TrialRows } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Findings } from '../schema.ts';
import { ratingOf } from './carrying.ts';
import { heatedCableOf } from './heatedCable.ts';

/** The measured cables of a trial as candidates for a run, and those that cannot be, with what is missing. */
export interface RunCandidates {
  cables: RunCable[];
  missing: { cable: string; name: string; text: string }[];
}

const MILLIOHM = 1e-3;

/**
 * Each compared or reference cable with its own resistance, size and heating test, never its label's; price and mass where they
 * are known. Only the rating is the label's word.
 */
export function runCandidates(trial: Trial, rows: TrialRows, findings: Findings): RunCandidates {
  const candidates: RunCandidates = { cables: [], missing: [] };
  for (const readings of rows.cables) {
    const found = findings.cables.find((c) => c.cable === readings.cable.cable);
    if (!found || found.role === 'control') continue;
    const { cable: heated, missing } = heatedCableOf(found);
    if (heated === null) candidates.missing.push({ cable: found.cable, name: found.name, text: missing });
    else candidates.cables.push(candidateOf(trial, readings, found, findings, heated));
  }
  return candidates;
}

function candidateOf(
  trial: Trial,
  readings: CableReadings,
  found: CableFindings,
  findings: Findings,
  heated: RunCable['heated'],
): RunCable {
  const carrying = findings.current?.cables.find((c) => c.cable === found.cable)?.carrying ?? null;
  const resistance = found.resistance_20C!;
  const { kelvin, assumed } = ratingOf(readings);
  return {
    id: found.cable,
    name: found.name,
    measured: true,
    heated,
    ohmsPerMetre: {
      value: resistance.value * MILLIOHM,
      low: resistance.interval[0] * MILLIOHM,
      high: resistance.interval[1] * MILLIOHM,
    },
    area: found.conductor_area!.value * 1e-6,
    rating: kelvin,
    ratingAssumed: assumed,
    loss: carrying ? { factor: carrying.loss_factor, u: carrying.loss_u } : { factor: 1, u: MODEL_LOSS_U },
    massPerMetre: massOf(readings),
    price: pricedOf(trial, found.cable),
  };
}

/** kg/m of the whole cable; null where no piece was weighed whole or in all its parts. */
function massOf(readings: CableReadings): number | null {
  for (const { specimen } of readings.specimens) {
    const weight = weightOf(readings, specimen);
    if (weight && weight.condition === undefined) return Math.exp(weight.figure.ln) / GRAVITY;
  }
  return null;
}

function pricedOf(trial: Trial, id: string): RunCable['price'] {
  const cable = trial.cables.find((c) => c.cable === id);
  const known = cable ? priceOf(cable) : null;
  const perMetre = known && pricePerMetre(known.price);
  return known && perMetre !== null ? { perMetre, currency: known.currency } : null;
}
