/** Invented droops and invented fields of judged cables, as the targets for Bend were set: what the program makes of them. */

import { findingsOf } from '../../src/findings/findings.ts';
import type { FlexCable } from '../../src/findings/shapes/flex.ts';
import type { Entry } from '../../src/journal/entry.ts';
import { droopOfSet } from '../../src/methods/flex/droopWithSet.ts';
import { cleanCutBands } from '../../src/methods/flex/pairs/bands.ts';
import { bestSet, chancesOfPairs, drawAbilities, placeChances } from '../../src/methods/flex/pairs/chances.ts';
import type { JudgedPair } from '../../src/methods/flex/pairs/judgement.ts';
import { pairSchedule } from '../../src/methods/flex/pairs/schedule.ts';
import { fitPairs, WEAK_PRIOR } from '../../src/methods/flex/pairs/tiedPreference.ts';
import { fold } from '../../src/trial/fold.ts';
import { type Draws, drawsFrom } from './random.ts';
import { entriesOf, type Row, row, shown } from './tables.ts';

const G = 9.80665;
/** Where the overhang may lie, m. */
const OVERHANGS = { least: 0.1, most: 0.6 };
const RULE_LIMIT = 1; // mm
const RULE_STEP = 0.5; // mm
const RULE_SCATTER = 0.2; // mm, one standard deviation

export interface Droops {
  seed: number;
  /** Cables of one trial: they share one rule. */
  cables: number;
  /** How far the tip stands off by itself, as a share of the overhang: uniform within ±. */
  set: number;
  overhang: 'advised' | 'any' | '300 mm';
}

export interface DroopJudged {
  truth: number;
  found: FlexCable;
}

/** One trial of droops: EI and weight log-uniform, read three times each way up by a rule of ±1 mm. */
export function drawDroops(o: Droops): DroopJudged[] {
  const draws = drawsFrom(o.seed);
  const log = (low: number, high: number) => Math.exp(draws.between(Math.log(low), Math.log(high)));
  const error = { overhang: draws.between(-RULE_LIMIT, RULE_LIMIT), tip_drop: draws.between(-RULE_LIMIT, RULE_LIMIT) };
  const truths: number[] = [];
  const readings: Row[] = [];
  const read = (specimen: string, quantity: keyof typeof error, metres: number, position: string) => {
    for (let i = 0; i < 3; i++)
      readings.push(
        row({
          reading: `r${readings.length}`,
          specimen,
          quantity,
          value: shown(metres * 1000 + error[quantity] + draws.scatter(RULE_SCATTER), RULE_STEP),
          unit: 'mm',
          instrument: quantity === 'overhang' ? 'rule' : 'square',
          set: 'd',
          position,
          temperature: '20.0',
          temperature_unit: 'C',
        }),
      );
  };
  for (let i = 0; i < o.cables; i++) {
    const EI = log(0.005, 2);
    const weight = log(2, 15);
    const c = Math.cbrt(EI / weight);
    const overhang = overhangFor(o.overhang, c, draws);
    const set = draws.between(-o.set, o.set);
    const specimen = `c${i}-b`;
    truths.push(EI);
    readings.push(...weighed(specimen, weight * (1 + draws.between(-0.005, 0.005)), readings.length));
    read(specimen, 'overhang', overhang, '');
    const lambda = (weight * overhang ** 3) / EI;
    for (const [position, sign] of [
      ['up', 1],
      ['down', -1],
    ] as const) {
      // Beyond λ = 900 the solver ends; such a piece hangs plumb either way.
      const { drop } = droopOfSet(Math.min(lambda, 900), lambda > 25 ? 0 : 2 * set, sign);
      read(specimen, 'tip_drop', drop * overhang, position);
    }
  }
  const entries = trialOf(truths.length, readings);
  const found = findingsOf(fold(entries), { draws: 0 }).flex!.cables;
  return found.map((f, i) => ({ truth: truths[i], found: f }));
}

function overhangFor(way: Droops['overhang'], c: number, draws: Draws): number {
  if (way === '300 mm') return 0.3;
  const { least, most } = OVERHANGS;
  return way === 'advised' ? Math.min(most, Math.max(least, 1.82 * c)) : draws.between(least, most);
}

function weighed(specimen: string, weight: number, n: number): Row[] {
  const of = (quantity: string, value: string, unit: string, instrument: string) =>
    row({ reading: `w${n}-${quantity}`, specimen, quantity, value, unit, instrument });
  return [
    of('specimen_length', '700.0', 'mm', 'tape'),
    of('specimen_mass', ((weight / G) * 700).toFixed(2), 'g', 'scale'),
  ];
}

function trialOf(cables: number, readings: Row[]): Entry[] {
  const ids = Array.from({ length: cables }, (_, i) => `c${i}`);
  return entriesOf('droops', {
    cables: ids.map((cable) => row({ cable, maker: cable, claimed_size: '2 AWG' })),
    specimens: ids.map((cable) => row({ specimen: `${cable}-b`, cable, kind: 'bend' })),
    instruments: [
      row({ instrument: 'rule', kind: 'steel rule', resolution: RULE_STEP, max_error: RULE_LIMIT, unit: 'mm' }),
      row({ instrument: 'square', kind: 'steel rule', resolution: RULE_STEP, max_error: RULE_LIMIT, unit: 'mm' }),
      row({ instrument: 'tape', kind: 'steel rule', resolution: 0.1, max_error: 0.1, unit: 'mm' }),
      row({ instrument: 'scale', kind: 'pocket scale', resolution: 0.01, max_error_percent: 0.5, unit: 'g' }),
    ],
    readings,
  });
}

export interface Fields {
  firstSeed: number;
  fields: number;
  cables: number;
  judges: number;
  /** Standard deviation of the true abilities. */
  spread: number;
}

export interface FieldsTold {
  fields: number;
  bestInBand1: number;
  equalParted: number;
  bestSetHolds: number;
  bestSetSize: number;
  bands: number;
  sizeOfBand1: number;
}

/** Weight of a tie in the invented judgements. */
const TRUE_TIE = 0.5;

/** Judges every pair of a field by its true abilities, sides and order as the schedule asks. */
function judgedField(abilities: readonly number[], judges: number, draws: Draws, seed: string): JudgedPair[] {
  return Array.from({ length: judges }, (_, judge) =>
    pairSchedule(abilities.length, { seed, round: judge }).map(({ left, right }): JudgedPair => {
      const d = abilities[left] - abilities[right];
      const result = draws.pick(['left', 'right', 'same'] as const, [Math.exp(d / 2), Math.exp(-d / 2), TRUE_TIE]);
      return { left, right, result, judge };
    }),
  ).flat();
}

/** Many fields, two cables of each truly equal: how often bands and best set are right. */
export function judgeFields(o: Fields): FieldsTold {
  const told = { bestInBand1: 0, equalParted: 0, bestSetHolds: 0, bestSetSize: 0, bands: 0, sizeOfBand1: 0 };
  for (let f = 0; f < o.fields; f++) {
    const draws = drawsFrom(o.firstSeed + f);
    const seed = (o.firstSeed + f).toString(16).padStart(16, '0');
    const abilities = Array.from({ length: o.cables }, () => draws.scatter(o.spread));
    const [one, other] = [draws.whole(0, o.cables - 1), draws.whole(1, o.cables - 1)];
    const twin = (one + other) % o.cables;
    abilities[twin] = abilities[one];
    const best = Math.max(...abilities);
    const fit = fitPairs(judgedField(abilities, o.judges, draws, seed), o.cables, {
      prior: WEAK_PRIOR,
      side: true,
      ties: 'always',
    });
    const { band } = cleanCutBands(fit.abilities, chancesOfPairs(fit));
    const places = placeChances(drawAbilities(fit, 4000, seed), o.cables);
    const set = bestSet(
      abilities.map((_, i) => places[i * o.cables]),
      0.95,
    );
    const isBest = (i: number) => abilities[i] === best;
    if (abilities.some((_, i) => isBest(i) && band[i] === 1)) told.bestInBand1++;
    if (band[one] !== band[twin]) told.equalParted++;
    if (set.some(isBest)) told.bestSetHolds++;
    told.bestSetSize += set.length / o.fields;
    told.bands += Math.max(...band) / o.fields;
    told.sizeOfBand1 += band.filter((b) => b === 1).length / o.fields;
  }
  const share = (n: number) => n / o.fields;
  return {
    ...told,
    fields: o.fields,
    bestInBand1: share(told.bestInBand1),
    equalParted: share(told.equalParted),
    bestSetHolds: share(told.bestSetHolds),
  };
}
