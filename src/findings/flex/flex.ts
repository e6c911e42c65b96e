import type { Trial } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import type { CableReadings, TrialRows } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Warning } from '../schema.ts';
import type { Flex, FlexCable } from '../shapes/flex.ts';
import { BendReadings } from './bendReadings.ts';
import { boundsOf } from './boundsOf.ts';
import { coilOf, springBackOf } from './coils.ts';
import { type DroopResult, droopsOf } from './droops.ts';
import { flexWarnings } from './flexWarnings.ts';
import { judgedOf, type KnownEase } from './judged.ts';
import { type LnFigure, measuredOfLn, sdOf, weighted } from './lnFigure.ts';
import { noStiffnessSentence } from './noStiffness.ts';
import { pushBesideDroop } from './pushBesideDroop.ts';
import { type PushResult, pushesOf } from './pushes.ts';
import { coldStiffening, compared, headlineOf, type StiffnessAt, stiffnessBands, stiffnessesOf } from './stiffness.ts';
import { bandSentence, bandsOf } from './words.ts';

/** What is known of one cable's bending before cables are compared. */
export interface CableBending {
  readings: CableReadings;
  droops: DroopResult[];
  pushes: PushResult[];
  all: StiffnessAt[];
  headline: StiffnessAt | null;
  shown: FlexCable;
  /** Why a coil or a bend that sprang back gives no figure; empty where it does, or where there is none. */
  coilWhy: string;
  springWhy: string;
}

export interface FlexFound {
  /** null when nothing about bending was read or judged. */
  flex: Flex | null;
  warnings: Warning[];
  ground: FlexGround;
}

/** What stands behind the figures, with the doubts that cables have in common kept apart: for comparing cables. */
export interface FlexGround {
  /** ln EI of the cables measured by the method of most, the clamp's edge included. */
  stiffness: ReadonlyMap<string, LnFigure>;
  /** ln(N/m) */
  weight: ReadonlyMap<string, LnFigure>;
  ease: KnownEase | null;
}

const NO_GROUND: FlexGround = { stiffness: new Map(), weight: new Map(), ease: null };

export interface FlexOptions {
  level: number;
}

/** Everything that bending readings and judged pairs say about a trial's cables. */
export function flexOf(
  trial: Trial,
  rows: TrialRows,
  cables: readonly CableFindings[],
  { level }: FlexOptions,
): FlexFound {
  const bend = new BendReadings(trial, rows.tools);
  if (bend.all.length === 0 && trial.judgements.length === 0) return { flex: null, warnings: [], ground: NO_GROUND };
  const bent = new Set(bend.all.map((r) => r.cable));
  const bending = rows.cables.flatMap((readings, i) =>
    bent.has(readings.cable.cable) ? [bendingOf(readings, cables[i], bend, trial, level)] : [],
  );
  withBands(bending);
  const names = new Map(cables.map((c) => [c.cable, c.name]));
  const method = commonMethod(bending);
  const stiffness = new Map(
    bending.flatMap(({ headline, shown }) =>
      headline && headline.method === method
        ? [[shown.cable, { ln: headline.figure.ln, sd: sdOf(compared(headline)) }]]
        : [],
    ),
  );
  const { judged, read, ease } = judgedOf(trial, { level, names, stiffness });
  const flex: Flex = { cables: bending.map((b) => b.shown), judged, sentence: flexSentence(bending, judged?.sentence) };
  return { flex, warnings: flexWarnings(bending, bend.apart, judged, read, names), ground: groundOf(bending, ease) };
}

function groundOf(bending: readonly CableBending[], ease: KnownEase | null): FlexGround {
  const method = commonMethod(bending);
  const weightOf = (b: CableBending) => b.droops.find((d) => d.weight && !d.weight.condition)?.weight?.figure;
  return {
    stiffness: new Map(
      bending.flatMap(({ shown, headline }) =>
        headline?.method === method ? [[shown.cable, compared(headline)] as const] : [],
      ),
    ),
    weight: new Map(
      bending.flatMap((b) => {
        const figure = weightOf(b);
        return figure ? [[b.shown.cable, figure] as const] : [];
      }),
    ),
    ease,
  };
}

function bendingOf(
  readings: CableReadings,
  found: CableFindings,
  bend: BendReadings,
  trial: Trial,
  level: number,
): CableBending {
  const droops = droopsOf(readings, bend, level);
  const pushes = pushesOf(readings, bend, level);
  const all = stiffnessesOf(droops, pushes);
  const headline = headlineOf(all, trial.targetTemperature);
  const stiffness = headline ? measuredOfLn(headline.figure, 'N m2', level, 1, headline.condition) : null;
  const weight = droops.find((d) => d.weight)?.weight ?? null;
  const coil = coilOf(readings, bend, level);
  const spring = springBackOf(readings, bend, level);
  const shown: FlexCable = {
    cable: found.cable,
    name: found.name,
    role: found.role,
    bending_stiffness: stiffness,
    method: headline?.method ?? null,
    push_state: headline?.state ?? null,
    temperature_C: headline?.temperature == null ? null : headline.temperature - ZERO_CELSIUS,
    temperature_range_C: headline?.range ?? null,
    weight_per_metre: weight && measuredOfLn(weight.figure, 'N/m', level, 1, weight.condition),
    bending_length: bendingLength(headline, weight?.figure ?? null, level),
    band: null,
    cannot_be_told_from: [],
    coil_ratio: coil.figure,
    spring_back: spring.figure,
    coil_temperature_C: coil.temperature_C,
    spring_back_temperature_C: spring.temperature_C,
    bounds: boundsOf(found, stiffness),
    cold_stiffening: coldStiffening(all, level),
    push_over_droop: pushBesideDroop(all, level),
    droops: droops.map((d) => d.shown),
    pushes: pushes.map((p) => p.shown),
    cautions: [...cautionsOf(droops, pushes), coil.why, spring.why].filter((text) => text !== ''),
  };
  return { readings, droops, pushes, all, headline, shown, coilWhy: coil.why, springWhy: spring.why };
}

/** c = (EI/w)^(1/3), mm; what EI and w share cancels. */
function bendingLength(headline: StiffnessAt | null, weight: StiffnessAt['figure'] | null, level: number) {
  if (!headline || !weight) return null;
  const c = weighted([
    { figure: headline.figure, share: 1 / 3 },
    { figure: weight, share: -1 / 3 },
  ]);
  return measuredOfLn(c, 'mm', level, 1000, headline.condition);
}

function cautionsOf(droops: readonly DroopResult[], pushes: readonly PushResult[]): string[] {
  const edges = droops.flatMap((d) => (d.clampEdge > 0 ? [d.clampEdge] : []));
  const cautions: string[] = [];
  if (edges.length > 0)
    cautions.push(
      `Where the piece really leaves its clamp is not in the ±: a quarter of its diameter inside or outside the edge is ${(100 * Math.max(...edges)).toFixed(0)} % of the stiffness. The bands allow for it. Clamp over a sharp, square edge.`,
    );
  if (pushes.length > 0)
    cautions.push('A scale gives way under a push: deflection counts from its platform, not from the bench.');
  return cautions;
}

/** The method by which most cables have a stiffness: only figures of one method are compared. */
function commonMethod(bending: readonly CableBending[]): StiffnessAt['method'] {
  const count = (method: string) => bending.filter((b) => b.headline?.method === method).length;
  return count('push') > count('droop') ? 'push' : 'droop';
}

function withBands(bending: readonly CableBending[]): void {
  const method = commonMethod(bending);
  const inOrder = bending.filter((b) => b.shown.role === 'compared' && b.headline?.method === method);
  if (inOrder.length < 2) return;
  const { band, near } = stiffnessBands(inOrder.map((b) => compared(b.headline!)));
  inOrder.forEach((b, i) => {
    b.shown.band = band[i];
    b.shown.cannot_be_told_from = near[i].map((j) => inOrder[j].shown.cable);
  });
}

function flexSentence(bending: readonly CableBending[], judged: string | undefined): string {
  const banded = bending.flatMap(({ shown, headline }) =>
    shown.band === null || !headline ? [] : [{ name: shown.name, band: shown.band, ln: headline.figure.ln }],
  );
  const how = commonMethod(bending) === 'droop' ? 'By droop' : 'By push';
  const order = [...banded].sort((a, b) => a.ln - b.ln);
  const measured = bandSentence(bandsOf(order), how);
  return [measured || noStiffnessSentence(bending), judged ?? ''].filter(Boolean).join(' ');
}
