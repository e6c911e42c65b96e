import type { OutcomeLevels } from '../../methods/assay/conformity.ts';
import { type Consistency, consistency, standardisedResiduals } from '../../methods/assay/consistency.ts';
import { type Contradiction, contradiction } from '../../methods/assay/contradiction.ts';
import { type Direction, lnFigure, lnFigureIf, metalBelief, onCondition } from '../../methods/assay/figures.ts';
import type { CableAssay, JointAssay } from '../../methods/assay/joint.ts';
import type { RowKind } from '../../methods/assay/row.ts';
import { spreadOfArea } from '../../methods/assay/spread.ts';
import { COPPER_RESISTIVITY } from '../../methods/metal/constants.ts';
import { COPPER_FAMILY } from '../../methods/metal/hypotheses.ts';
import type { Component } from '../../numerics/mixture.ts';
import type { Fitting } from '../../trial/trial.ts';
import { AWG_PER_LOG_AREA, awgName, effectiveAwg, effectiveGaugeText, nearestAwgMet } from '../../units/gauge.ts';
import { claimsOf, unjudged } from '../claims/claims.ts';
import { type ReadLabel, readLabel } from '../claims/label.ts';
import { mapped, measuredFromLn } from '../measured.ts';
import { doubtfulLengths } from '../rows/doubtfulLengths.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Measured } from '../schema.ts';
import { agreementOf, contradictionSentence, howToTakeAgain, lengthSentence } from './agreement.ts';
import { areaFigure, rowsUsed } from './areaFigure.ts';
import { assumedLimits } from './assumed.ts';
import { condition } from './condition.ts';
import { copperOf } from './copper.ts';
import { fitOf } from './fit.ts';
import { geometryOf } from './geometry.ts';
import { massesOf } from './masses.ts';
import { metalFound } from './metalWords.ts';
import { missingOf } from './missing.ts';
import { firstReading, nextReading, takeAgain } from './nextReading.ts';
import { cableSentence } from './sentence.ts';
import { slipToCheck } from './slip.ts';
import { strandsOf } from './strands.ts';
import { toolErrorsOf } from './toolErrors.ts';

export interface CableContext {
  joint: JointAssay;
  level: number;
  levels: OutcomeLevels;
  fittings: readonly Fitting[];
  /** The name that each cable goes by. */
  names: ReadonlyMap<string, string>;
}

const LENGTH_AGAIN = {
  conductor_length: 'bare conductor from end to end',
  specimen_length: 'piece from end to end',
  resistance: 'distance between the voltage contacts',
} as const;

const CONTROL_SENTENCE = 'Control piece: it checks the tools and is not compared with the cables.';
/** One cable as findings, given the joint assay of all. */
export function cableFindings(c: CableReadings, assay: CableAssay | null, context: CableContext): CableFindings {
  const label = readLabel(c.cable.label);
  const measured = assay !== null && c.rows.length > 0;
  return measured ? withAssay(c, assay, label, context) : withoutAssay(c, label, context);
}

function labelFindings(c: CableReadings, label: ReadLabel): CableFindings['label'] {
  return {
    size: c.cable.label.size,
    metal: c.cable.label.metal,
    read_as: label.readAs,
    vague: label.vague,
    claimed_area_mm2: label.area === null ? null : label.area * 1e6,
  };
}

function withAssay(c: CableReadings, assay: CableAssay, label: ReadLabel, context: CableContext): CableFindings {
  const { joint, level, levels } = context;
  const agreement = consistency(assay);
  const clash = contradiction(agreement);
  if (clash && agreement) return withContradiction(c, assay, label, context, agreement, clash);
  const from = rowsUsed(c);
  const ifCopper = condition(assay);
  const ln = (d: Direction): readonly Component[] =>
    ifCopper ? lnFigureIf(assay, d, COPPER_FAMILY) : lnFigure(assay, d);
  const figure = (d: Direction, scale: number, unit: string): Measured =>
    measuredFromLn(ln(d), { scale, unit, level, from, condition: ifCopper });
  const has = (kind: string) => c.rows.some((r) => r.kind === kind);
  const area = areaFigure(c, assay, level);
  const resistance = has('resistance') ? figure('resistancePerMetre', 1e3, 'mohm/m') : null;
  const massResistivity = has('resistance') && has('mass') ? figure('massResistivity', 1e3, 'ohm g/m2') : null;
  const belief = metalBelief(assay);
  const found = metalFound(belief);
  const strands = strandsOf(c, level);
  const eye = Object.values(c.assay.sight).some((l) => l < 0);
  const copper = copperOf(assay, label, { level, from, condition: ifCopper });
  const claims = claimsOf({
    assay,
    label,
    level,
    levels,
    area,
    copperArea: copperArea(copper.copper_of_claim, label),
    resistance,
    massResistivity,
    metalKnown: eye || c.rows.some((r) => r.kind !== 'mass' && r.kind !== 'lay'),
    strandsClaimed: c.cable.label.strands,
    strands: strands.strands,
    ohmsClaimed: c.cable.label.ohmsPerMetre,
    recheck: agreement?.recheck ?? null,
  });
  const geometry = geometryOf(c.groups, assay, level);
  // The budget is of the interval that is shown: where that stands "if copper", so does the budget.
  const spread = spreadOfArea(joint, (ifCopper && onCondition(assay, COPPER_FAMILY)) || assay);
  const met = nearestAwgMet(area.interval[0] * 1e-6);
  const notCopper = found !== null && !COPPER_FAMILY.some((m) => m === found);
  const result: CableFindings = {
    ...withoutAssay(c, label, context),
    conductor_area: area,
    effective_awg: mapped(
      area,
      'AWG',
      (a) => effectiveAwg(a * 1e-6),
      (a) => AWG_PER_LOG_AREA / a,
    ),
    effective_gauge_text: effectiveGaugeText(area.value * 1e-6),
    nearest_size_met: met === null || notCopper ? null : `${awgName(met)} AWG`,
    conducts_like: notCopper && resistance ? conductsLike(resistance) : null,
    mass_resistivity: massResistivity,
    metal: Object.fromEntries(belief),
    metal_found: found,
    ...copper,
    lay_factor: figure('lay', 1, '1'),
    density: figure('density', 1e-3, 'g/cm3'),
    resistance_20C: resistance,
    mass_per_metre: has('mass') ? figure('massPerMetre', 1e3, 'g/m') : null,
    strand_count: strands.strands,
    strand_diameter: strands.diameter,
    strands_sentence: strands.sentence,
    ...geometry,
    consistency: agreementOf(agreement),
    claims,
    residuals: residualRows(c, assay),
    spread_from: spread.map(({ input, label: words, share, assumed }) => ({
      input,
      label: assumed ? `${words} (assumed)` : words,
      share,
    })),
    tool_errors: toolErrorsOf(joint, assay, claims),
    next_reading: agreement?.recheck
      ? recheckFirst(agreement.recheck)
      : nextReading(joint, c, assay, level, { ohmsPerMetre: resistance && resistance.value * 1e-3, ifCopper }),
    missing: missingOf(c),
    masses: massesOf(c),
    fit: c.cable.role === 'control' ? [] : fitOf(c.cable.cable, context.fittings, geometry.bundle_diameter, area),
    assumed: assumedLimits(joint, c),
  };
  const slip = (share: number) => slipToCheck(c, share);
  return { ...result, sentence: c.cable.role === 'control' ? CONTROL_SENTENCE : cableSentence(result, label, slip) };
}

function residualRows(c: CableReadings, assay: CableAssay): CableFindings['residuals'] {
  const residuals = standardisedResiduals(assay);
  return c.rows.map((row, i) => ({
    quantity: row.quantity,
    specimen: row.specimen,
    n: row.n,
    readings: row.readings,
    mean: row.mean,
    unit: row.unit,
    text: row.text,
    residual: residuals[i],
  }));
}

function recheckFirst(kind: RowKind): CableFindings['next_reading'] {
  const { quantity, doThis } = howToTakeAgain(kind);
  return takeAgain(quantity, doThis);
}

/** Readings that contradict one another grossly: what was read is shown, and nothing is judged by it. */
function withContradiction(
  c: CableReadings,
  assay: CableAssay,
  label: ReadLabel,
  context: CableContext,
  agreement: Consistency,
  clash: Contradiction,
): CableFindings {
  const kind = agreement.recheck as RowKind;
  const geometry = geometryOf(c.groups, assay, context.level);
  const [length] = doubtfulLengths(c);
  const sentence = length ? lengthSentence(length) : contradictionSentence(kind, clash);
  const words = agreementOf(agreement);
  return {
    ...withoutAssay(c, label, context),
    ...geometry,
    metal_of_section: null,
    sentence,
    consistency: words && { ...words, sentence },
    claims: unjudged(label),
    residuals: residualRows(c, assay),
    next_reading: length
      ? takeAgain(length.quantity, `measure the ${LENGTH_AGAIN[length.quantity]} again`)
      : recheckFirst(kind),
    assumed: assumedLimits(context.joint, c),
  };
}

/** The gauge of copper that would have the same resistance per metre, without lay: what an installer may count on. */
function conductsLike(mohmPerMetre: Measured): string {
  const area = COPPER_RESISTIVITY / (mohmPerMetre.value * 1e-3);
  return `conducts like about ${effectiveGaugeText(area)} copper`;
}

/** The headline turned back into mm² of copper: what "copper held" found. */
function copperArea(ofClaim: Measured | null, label: ReadLabel): Measured | null {
  if (!ofClaim || label.area === null) return null;
  const nominal = label.area * 1e6;
  return mapped(
    ofClaim,
    'mm2',
    (x) => x * nominal,
    () => nominal,
  );
}

function withoutAssay(c: CableReadings, label: ReadLabel, context: CableContext): CableFindings {
  const strands = strandsOf(c, context.level);
  return {
    cable: c.cable.cable,
    name: context.names.get(c.cable.cable) ?? c.cable.name,
    role: c.cable.role,
    jacket_colour: c.cable.jacketColour,
    label: labelFindings(c, label),
    sentence: 'Nothing has been measured on this piece that tells what is inside.',
    conductor_area: null,
    effective_awg: null,
    effective_gauge_text: null,
    nearest_size_met: null,
    conducts_like: null,
    mass_resistivity: null,
    metal: {},
    metal_found: null,
    copper_share: null,
    lay_factor: null,
    density: null,
    resistance_20C: null,
    mass_per_metre: null,
    strand_count: strands.strands,
    strand_diameter: strands.diameter,
    strands_sentence: strands.sentence,
    outer_diameter: null,
    bundle_diameter: null,
    wall: null,
    metal_of_section: null,
    metal_of_claim: null,
    copper_of_claim: null,
    consistency: null,
    claims: [],
    residuals: [],
    spread_from: [],
    tool_errors: [],
    next_reading: firstReading(),
    missing: missingOf(c),
    masses: massesOf(c),
    fit: [],
    assumed: [],
    monte_carlo: null,
  };
}
