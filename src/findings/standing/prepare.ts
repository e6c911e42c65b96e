import { drawPlan } from '../../methods/assay/drawPlan.ts';
import type { JointAssay } from '../../methods/assay/joint.ts';
import {
  type DrawnStanding,
  drawValues,
  type ScaledCriterion,
  type Source,
} from '../../methods/decide/standing/drawValues.ts';
import { type LikeCriteria, likeCriteria } from '../../methods/decide/standing/likeCriteria.ts';
import { meanValues } from '../../methods/decide/standing/places.ts';
import { rescaled } from '../../methods/decide/standing/rescaled.ts';
import type { Trial } from '../../trial/trial.ts';
import type { FlexGround } from '../flex/flex.ts';
import type { TrialRows } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Measured, Warning } from '../schema.ts';
import type { ValueForMoney } from '../shapes/decide.ts';
import type { Flex } from '../shapes/flex.ts';
import { type CableGround, FINDERS, FURTHER, ofMeasured } from './cableFigures.ts';
import { CRITERIA, claimedMost } from './criteria.ts';
import { ENDURANCE } from './jobs.ts';
import { metrePrice, valueOfCable } from './money.ts';
import { type Scaled, scaledEndurance, scaledKind, scaledPrice } from './scales.ts';
import { type StandingSettings, standingSettings } from './settings.ts';

/** How long each cable bore one test. */
export interface EnduranceFigures {
  /** Its name among the criteria, after `endurance:`. */
  test: string;
  unit: string;
  /** The best end of its scale where none is stated. */
  best: number;
  /** True for a best end that follows the field. */
  suggested: boolean;
  sources: ReadonlyMap<string, Source>;
}

/** Figures of parts that the standing knows only by cable: endurance by test, current carried. */
export interface FurtherFigures {
  endurance: readonly EnduranceFigures[];
  current: ReadonlyMap<string, Measured>;
}

export interface StandingGround {
  trial: Trial;
  rows: TrialRows;
  cables: readonly CableFindings[];
  joint: JointAssay;
  flex: Flex | null;
  ground: FlexGround;
  further: FurtherFigures;
  /** Hexadecimal. */
  seed: string;
  draws: number;
  /** True where a scale may be changed later without drawing again. */
  keepRaw?: boolean;
  /** The same ground prepared before with as many draws, its figures kept: it is put on other scales instead of drawn again. */
  before?: PreparedStanding | null;
  onBlock?: (draws: number) => boolean;
}

/** Everything about the standing that no weight changes: kept while weights are moved. */
export interface PreparedStanding {
  settings: StandingSettings;
  criteria: Scaled[];
  cables: CableFindings[];
  /** References: compared with nobody. */
  outside: CableFindings[];
  /** cables × criteria: whether a figure is known. */
  known: boolean[][];
  drawn: DrawnStanding;
  means: Float64Array;
  outsideMeans: Float64Array;
  alike: LikeCriteria[];
  value: ValueForMoney[];
  warnings: Warning[];
  seed: Uint8Array;
}

interface Found {
  scaled: Scaled;
  /** By cable. */
  sources: Map<string, Source>;
}

/** Draws for references, of which only the mean worth is told. */
const OUTSIDE_DRAWS = 2000;

/** Bytes from which the draws of the standing begin: its own, so that no other part's digits move. */
export const standingSeed = (seed: string): Uint8Array =>
  Uint8Array.from(`${seed}:standing`, (c) => c.charCodeAt(0) & 0xff);

function kindsFound(grounds: readonly CableGround[], area: number | null, settings: StandingSettings): Found[] {
  return CRITERIA.flatMap((kind) => {
    const finder = FINDERS[kind.id];
    const sources = new Map<string, Source>();
    for (const c of grounds) {
      const source = finder?.(c) ?? null;
      if (source) sources.set(c.found.cable, source);
    }
    return sources.size > 0 ? [{ scaled: scaledKind(kind, area, settings.scales.get(kind.id)), sources }] : [];
  });
}

function furtherFound(further: FurtherFigures, area: number | null, settings: StandingSettings): Found[] {
  const tests = further.endurance.map((e) => {
    const id = `${ENDURANCE}${e.test}`;
    return { scaled: scaledEndurance(id, e, settings.scales.get(id)), sources: new Map(e.sources) };
  });
  const kind = CRITERIA.find(({ id }) => id === 'current')!;
  const current = scaledKind(kind, area, settings.scales.get('current'));
  const sources = new Map([...further.current].map(([cable, figure]) => [cable, ofMeasured(figure)]));
  return sources.size > 0 ? [...tests, { scaled: current, sources }] : tests;
}

function pricesFound(trial: Trial, area: number | null, settings: StandingSettings, warnings: Warning[]): Found[] {
  const priced = trial.cables.flatMap((cable) => {
    const price = cable.role === 'control' ? null : metrePrice(cable, trial.cables);
    return price ? [{ cable, ...price }] : [];
  });
  if (priced.length === 0) return [];
  const counts = new Map<string, number>();
  for (const { currency } of priced) counts.set(currency, (counts.get(currency) ?? 0) + 1);
  const [[currency]] = [...counts].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  const other = priced.filter((p) => p.currency !== currency);
  if (other.length > 0)
    warnings.push({
      code: 'standing-currencies',
      cable: null,
      text: `Prices stand in ${[...counts.keys()].map((c) => c || 'no currency').join(', ')}. Only those in ${currency || 'no currency'} are compared; the price of ${other.map((p) => p.cable.name).join(', ')} counts as not known.`,
    });
  const own = priced.filter((p) => p.currency === currency);
  const scaled = scaledPrice(
    currency,
    own.map((p) => p.amount),
    area,
    settings.scales.get('price'),
  );
  return [{ scaled, sources: new Map(own.map((p) => [p.cable.cable, { from: 'known', value: p.amount }])) }];
}

/**
 * Draws what every criterion is worth for every cable, once: the slow half of the standing. `decideBy` then makes the order from
 * it for any weights.
 *
 * Null when fewer than two compared cables have anything to be ordered by.
 */
export function prepareStanding(o: StandingGround): PreparedStanding | null {
  const { trial, rows, joint, flex, ground } = o;
  const settings = standingSettings(trial.settings);
  const warnings: Warning[] = settings.troubles.map((text) => ({
    code: 'standing-setting-not-understood',
    cable: null,
    text,
  }));
  const atOf = new Map(joint.cables.map((c, at) => [c.cable.cable, at]));
  const grounds = rows.cables.flatMap((readings, i): CableGround[] => {
    const found = o.cables[i];
    return found.role === 'control' ? [] : [{ found, readings, at: atOf.get(found.cable) ?? -1, flex, ground }];
  });
  const area = claimedMost(
    grounds.filter((g) => g.found.role === 'compared').map((g) => g.found.label.claimed_area_mm2),
  );
  const measured = [...kindsFound(grounds, area, settings), ...furtherFound(o.further, area, settings)];
  const all = [...measured, ...pricesFound(trial, area, settings, warnings)];
  const hasFigures = ({ found }: CableGround) => measured.some(({ sources }) => sources.has(found.cable));
  const inOrder = grounds.filter((g) => g.found.role === 'compared' && hasFigures(g)).map((g) => g.found);
  if (inOrder.length < 2) return null;
  // A criterion that only a reference has says nothing about the order.
  const criteria = all.filter(({ sources }) => inOrder.some(({ cable }) => sources.has(cable)));
  const outside = grounds.filter((g) => g.found.role === 'reference' && hasFigures(g)).map((g) => g.found);
  const seed = standingSeed(o.seed);
  const scaledFor = (cables: readonly CableFindings[]): ScaledCriterion[] =>
    criteria.map(({ scaled, sources }) => ({
      scale: scaled.scale,
      sources: cables.map(({ cable }) => sources.get(cable) ?? { from: 'unknown' }),
    }));
  const draw = (cables: readonly CableFindings[], how: Pick<StandingGround, 'draws' | 'keepRaw' | 'onBlock'>) =>
    drawValues({
      criteria: scaledFor(cables),
      count: cables.length,
      assay: joint.cables.length > 0 ? drawPlan(joint, FURTHER) : null,
      abilities: ground.ease,
      seed,
      ...how,
    });
  const scalesBefore = o.before?.criteria.map(({ scale }) => scale);
  const drawn =
    o.before && scalesBefore
      ? rescaled(o.before.drawn, scalesBefore, scaledFor(inOrder))
      : draw(inOrder, { draws: o.draws, keepRaw: o.keepRaw, onBlock: o.onBlock });
  return {
    settings,
    criteria: criteria.map(({ scaled }) => scaled),
    cables: inOrder,
    outside,
    known: inOrder.map(({ cable }) => criteria.map(({ sources }) => sources.has(cable))),
    drawn,
    means: meanValues(drawn),
    outsideMeans: outside.length > 0 ? meanValues(draw(outside, { draws: OUTSIDE_DRAWS })) : new Float64Array(0),
    alike: likeCriteria(drawn),
    value: grounds.map(({ found, readings }) => valueOfCable(readings.cable, found, trial.cables)),
    warnings,
    seed,
  };
}
