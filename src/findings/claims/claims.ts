import { atLeast, atMost, type Conformity, type OutcomeLevels, outcomeOf } from '../../methods/assay/conformity.ts';
import { probabilityCopperHeld } from '../../methods/assay/copperHeld.ts';
import { copperBelief, lnFigure, lnFigureIf, metalBelief } from '../../methods/assay/figures.ts';
import type { CableAssay } from '../../methods/assay/joint.ts';
import type { RowKind } from '../../methods/assay/row.ts';
import { COPPER_FAMILY, type Metal } from '../../methods/metal/hypotheses.ts';
import { mixtureCdf } from '../../numerics/mixture.ts';
import { FOR_COPPER_ONLY, NOT_TESTABLE } from '../cableOutcome.ts';
import type { Claim, Measured } from '../schema.ts';
import { asksForCopper, type ReadLabel } from './label.ts';
import { copperRequired, type Requirement, requirementsOf } from './requirements.ts';

export interface ClaimContext {
  assay: CableAssay;
  label: ReadLabel;
  level: number;
  levels: OutcomeLevels;
  area: Measured | null;
  /** Copper found, mm²: less than the metal area where the metal is clad. */
  copperArea: Measured | null;
  resistance: Measured | null;
  massResistivity: Measured | null;
  /** Whether an ohm, a strand diameter or the eye says what the metal is: from mass alone no area is judged to fall short. */
  metalKnown: boolean;
  strandsClaimed: number | null;
  strands: Measured | null;
  ohmsClaimed: number | null;
  /** Kind of reading to take again, null when they agree: a count that must be taken again judges nothing. */
  recheck: RowKind | null;
}

const MM2 = 1e6;
const MOHM = 1e3;
const two = (x: number) => x.toFixed(2);

function blank(reading: string, ofLabel: boolean, asks: string, source: string, note = ''): Claim {
  return {
    reading,
    of_label: ofLabel,
    asks,
    required: null,
    unit: null,
    nominal: null,
    tolerance: null,
    found: null,
    outcome: null,
    probability_met: null,
    shortfall: null,
    source,
    note,
  };
}

function copperHeld(c: ClaimContext): Claim[] {
  const { size, metal } = c.label;
  const asked = size && copperRequired(size);
  if (!asked || !asksForCopper(metal)) return [];
  const asks = `≥ ${two(asked.required * MM2)} mm² of copper`;
  const claim = blank('copper held', true, asks, asked.source);
  const base = {
    ...claim,
    required: asked.required * MM2,
    unit: 'mm2',
    nominal: asked.nominal * MM2,
    tolerance: asked.required / asked.nominal - 1,
    note: metal.metal === 'unsaid' ? 'The label names no metal; copper is what the size means.' : '',
  };
  if (c.assay.components.length === 0) return [base];
  const probability = probabilityCopperHeld(c.assay, asked.required);
  const copper = lnFigureIf(c.assay, 'area', COPPER_FAMILY);
  const bounded = copper.length ? atLeast(copper, asked.required, c.level, c.levels) : null;
  return [
    {
      ...base,
      found: c.copperArea,
      probability_met: probability,
      outcome: outcomeOf(probability, c.levels),
      shortfall: bounded?.shortfall ?? null,
    },
  ];
}

/** Outcome on resistance where the label names no construction: between the two limits nothing is settled. */
function resistanceOutcome(r: Requirement, strict: Conformity, c: ClaimContext): Judged {
  if (r.generous === null) return strict;
  const generous = atMost(lnFigure(c.assay, 'resistancePerMetre'), r.generous, c.level, c.levels);
  if (strict.outcome === 'falls short' && generous.outcome !== 'falls short')
    return { ...strict, outcome: 'not settled', probability: null };
  return strict;
}

/** A conformity whose probability depends on what the label leaves out. */
type Judged = Omit<Conformity, 'probability'> & { probability: number | null };

function asksOfResistance(r: Requirement): string {
  const mohm = (x: number) => (x * MOHM).toFixed(3);
  return r.generous === null
    ? `≤ ${mohm(r.required)} mΩ/m`
    : `≤ ${mohm(r.required)} to ${mohm(r.generous)} mΩ/m, by construction`;
}

function byRequirement(r: Requirement, c: ClaimContext): Claim {
  const isArea = r.of === 'area';
  const scale = isArea ? MM2 : MOHM;
  const unit = isArea ? 'mm2' : 'mohm/m';
  const asks = isArea ? `≥ ${two(r.required * MM2)} mm²` : asksOfResistance(r);
  const claim: Claim = {
    ...blank(r.reading, r.ofLabel, asks, r.source, r.note),
    required: r.required * scale,
    unit,
    nominal: r.nominal * scale,
    tolerance: r.tolerance,
  };
  if (!isArea && !asksForCopper(c.label.metal)) return { ...claim, note: FOR_COPPER_ONLY };
  const found = isArea ? c.area : c.resistance;
  if (!found) return claim;
  const conformity: Judged = isArea
    ? atLeast(lnFigure(c.assay, 'area'), r.required, c.level, c.levels)
    : resistanceOutcome(r, atMost(lnFigure(c.assay, 'resistancePerMetre'), r.required, c.level, c.levels), c);
  const blind = isArea && !c.metalKnown && conformity.outcome === 'falls short';
  return {
    ...claim,
    found,
    outcome: blind ? 'not settled' : conformity.outcome,
    probability_met: conformity.probability,
    shortfall: conformity.shortfall,
  };
}

/** Metals that honour each claim. Tin is not counted against "copper", nor told apart from it by these tools. */
const HONOURS: Readonly<Record<string, readonly Metal[]>> = {
  copper: COPPER_FAMILY,
  'tinned copper': COPPER_FAMILY,
  'copper-clad aluminium': ['copper-clad aluminium', 'tinned clad aluminium'],
  aluminium: ['aluminium'],
};

/** Mass resistivity that copper with a lay factor from 1 to 1.07 may show, Ω·g/m²: 0.15328 (ASTM B193, from memory) · k². */
const COPPER_MASS_RESISTIVITY = '0.150 to 0.176 Ω·g/m² (copper, any lay)';

function metalClaim(c: ClaimContext): Claim[] {
  const { metal } = c.label;
  const honours = HONOURS[metal.metal];
  if (!honours) return [];
  const asks = honours === COPPER_FAMILY ? COPPER_MASS_RESISTIVITY : metal.metal;
  const claim = blank(
    `metal`,
    true,
    asks,
    'ASTM B193 mass resistivity; ASTM B566 classes of clad aluminium (from memory)',
  );
  if (c.assay.components.length === 0) return [claim];
  const belief = metalBelief(c.assay);
  const probability = honours.reduce((sum, m) => sum + (belief.get(m) ?? 0), 0);
  const note =
    metal.metal === 'tinned copper'
      ? 'Copper is judged; whether the strands are tinned is for the eye: scrape one.'
      : `Label says ${metal.metal}.`;
  return [
    {
      ...claim,
      found: c.massResistivity,
      outcome: outcomeOf(probability, c.levels),
      probability_met: probability,
      note,
    },
  ];
}

function notTestable(c: ClaimContext): Claim[] {
  return c.label.metal.notTestable.map((word) =>
    blank(word, true, word, NOT_TESTABLE, 'Not testable with scale, rule and meter; nothing is said about it.'),
  );
}

/** How many strands short of the label is still the label: 2 %, as for the area. */
const STRAND_ALLOWANCE = -0.02;

function strandClaim(c: ClaimContext): Claim[] {
  if (c.strandsClaimed === null) return [];
  const required = c.strandsClaimed * (1 + STRAND_ALLOWANCE);
  const claim: Claim = {
    ...blank('strand count', true, `${c.strandsClaimed} strands`, 'The label, less 2 %: common practice, no source'),
    required,
    unit: '1',
    nominal: c.strandsClaimed,
    tolerance: STRAND_ALLOWANCE,
  };
  if (!c.strands) return [claim];
  const { value, u } = c.strands;
  const probability =
    u > 0 ? 1 - mixtureCdf([{ weight: 1, mean: value, sd: u, dof: Infinity }], required) : value >= required ? 1 : 0;
  const short = (n: number) => 1 - n / required;
  if (c.recheck === 'strands')
    return [
      {
        ...claim,
        found: c.strands,
        outcome: 'not settled',
        note: 'The count disagrees with mass and ohms: count again before it is held against the label.',
      },
    ];
  return [
    {
      ...claim,
      found: c.strands,
      outcome: outcomeOf(probability, c.levels),
      probability_met: probability,
      shortfall: { value: short(value), interval: [short(c.strands.interval[1]), short(c.strands.interval[0])] },
    },
  ];
}

function ohmsClaim(c: ClaimContext): Claim[] {
  if (c.ohmsClaimed === null) return [];
  const requirement: Requirement = {
    reading: 'ohms as stated',
    of: 'resistance',
    required: c.ohmsClaimed,
    generous: null,
    nominal: c.ohmsClaimed,
    tolerance: 0,
    ofLabel: true,
    source: 'The label',
    note: '',
  };
  return [byRequirement(requirement, { ...c, label: { ...c.label, metal: { ...c.label.metal, metal: 'copper' } } })];
}

/** Every reading of a cable's label with its outcome: copper held first, then the size, the metal, and the rest. */
export function claimsOf(c: ClaimContext): Claim[] {
  const coated =
    (metalBelief(c.assay).get('tinned copper') ?? 0) > 0.5 * copperBelief(c.assay) && copperBelief(c.assay) > 0;
  const sizes = c.label.size ? requirementsOf(c.label.size, coated) : [];
  return [
    ...copperHeld(c),
    ...sizes.map((r) => byRequirement(r, c)),
    ...metalClaim(c),
    ...strandClaim(c),
    ...ohmsClaim(c),
    ...notTestable(c),
  ];
}

/** The label's own readings where the readings contradict one another: named, asked for, and not settled. */
export function unjudged(label: ReadLabel): Claim[] {
  const note = 'The readings contradict each other, so nothing is judged.';
  const open = (reading: string, asks: string, source: string): Claim => ({
    ...blank(reading, true, asks, source, note),
    outcome: 'not settled',
  });
  const asked = label.size && asksForCopper(label.metal) ? copperRequired(label.size) : null;
  const sizes = label.size ? requirementsOf(label.size, false).filter((r) => r.ofLabel) : [];
  return [
    ...(asked ? [open('copper held', `≥ ${two(asked.required * MM2)} mm² of copper`, asked.source)] : []),
    ...sizes.map((r) =>
      open(r.reading, r.of === 'area' ? `≥ ${two(r.required * MM2)} mm²` : asksOfResistance(r), r.source),
    ),
    ...(HONOURS[label.metal.metal]
      ? [open('metal', label.metal.metal, 'ASTM B193 mass resistivity (from memory)')]
      : []),
  ];
}
