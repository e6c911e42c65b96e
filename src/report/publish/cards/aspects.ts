/** What a card can be about: the figure that it shows of each cable, and what is said of it. */
import { failsOnMetal, headlineClaim, saidClaim, sizeClaim } from '../../../findings/cableOutcome.ts';
import type { CableFindings, Claim, Findings, Measured } from '../../../findings/schema.ts';
import { figureText, measuredText } from '../../figures.ts';
import { type MetalKind, metalKind } from '../../metalKind.ts';
import { copperInOtherMetal, otherMetal, otherMetalWords } from '../../otherMetal.ts';
import { type MarkInput, markOfClaim } from '../../outcomeMark.ts';

export const ABOUTS = ['inside', 'bend', 'jacket', 'amps'] as const;
export type About = (typeof ABOUTS)[number];

/** Baked into every card about current. */
export const AMPS_CAUTION = 'Estimate. Fuse at the source by the rule you work under; terminals not judged.';

export interface Shown {
  /** 'Copper inside' */
  head: string;
  figure: Measured | null;
  value: string;
  /** `± 0.3`; empty where both ends stand in the value. */
  plain: string;
  unit: string;
  /** ± and unit together. */
  after: string;
  /** `if copper`; empty when the figure holds without one. */
  condition: string;
  /** Least that the label asks for, in the figure's unit; null where nothing is asked. */
  limit: number | null;
  nominal: number | null;
  metal: MetalKind;
  /** With its mark; null where nothing is judged. */
  outcome: { mark: MarkInput; word: string; note: string } | null;
  /** What is said where nothing is judged: a band, a thinnest place. */
  remark: string;
  /** The metal in words where it is not copper; empty elsewhere. */
  otherMetal: string;
  /** What less and more of it mean, for the ends of its scale; null where the claim's limit says it. */
  ends: readonly [less: string, more: string] | null;
  /** All of the metal where the figure is the copper in it: `copper-clad aluminium, 33.2 ± 0.9 mm²`; empty elsewhere. */
  allMetal: string;
}

const UNIT: Readonly<Record<string, string>> = { 'N m2': 'N·m²' };

function shown(head: string, figure: Measured | null, more: Partial<Shown>): Shown {
  const { value, plusMinus, unit, condition } = figureText(figure);
  const shownUnit = UNIT[unit] ?? unit;
  const plain = plusMinus === '' ? '' : `± ${plusMinus}`;
  const after = [plain, shownUnit].filter((part) => part !== '').join(' ');
  const base = { head, figure, value, plain, unit: shownUnit, after, condition };
  const empty = { limit: null, nominal: null, outcome: null, remark: '', otherMetal: '', allMetal: '', ends: null };
  return { ...base, ...empty, metal: 'unknown', ...more };
}

const ENDS = {
  bend: ['bends more easily', 'stiffer'],
  jacket: ['thinner', 'thicker'],
  amps: ['carries less', 'carries more'],
} as const;

/** How far a claim is missed, in words: `by 13.2 ± 0.9 %`. */
function shortText(claim: Claim): string {
  if (claim.outcome !== 'falls short' || claim.shortfall === null || claim.reading === 'metal') return '';
  const { value, interval } = claim.shortfall;
  const half = Math.max(interval[1] - value, value - interval[0]);
  const digits = half >= 0.0095 ? 0 : 1;
  return value > 0 ? `by ${(100 * value).toFixed(digits)} ± ${(100 * half).toFixed(digits)} %` : '';
}

function inside(cable: CableFindings): Shown {
  const said = saidClaim(cable);
  const marked = headlineClaim(cable);
  const claim = [sizeClaim(cable), headlineClaim(cable)].find((one) => one?.unit === 'mm2' && one.required !== null);
  const mark = marked === null ? null : markOfClaim(marked, cable.copper_share?.value ?? null);
  const wrong = otherMetalWords(cable) || 'another metal';
  const note = failsOnMetal(cable) ? wrong : said ? shortText(said) : '';
  // A limit for copper stands beside copper: the area of another metal would seem to meet it.
  const held = copperInOtherMetal(cable);
  const copper = cable.metal_found === 'copper' || cable.metal_found === 'tinned copper';
  return shown(copper || held ? 'Copper inside' : 'Metal inside', held ?? cable.conductor_area, {
    limit: claim?.required ?? null,
    nominal: claim?.nominal ?? null,
    metal: metalKind(cable.metal_found),
    outcome: mark === null ? null : { mark, word: mark.outcome, note },
    remark: cable.metal_found ?? '',
    otherMetal: otherMetal(cable),
    allMetal: held ? `${otherMetal(cable) || 'metal'}, ${measuredText(cable.conductor_area)}` : '',
  });
}

function bend({ flex }: Findings, cable: CableFindings): Shown {
  const found = flex?.cables.find((c) => c.cable === cable.cable);
  const bands = Math.max(0, ...(flex?.cables.map((c) => c.band ?? 0) ?? []));
  const remark = found?.band ? `band ${found.band} of ${bands}, the first bends most easily` : '';
  return shown('Bending stiffness', found?.bending_stiffness ?? null, {
    metal: metalKind(cable.metal_found),
    remark,
    ends: ENDS.bend,
  });
}

function jacket({ jacket: part }: Findings, cable: CableFindings): Shown {
  const found = part?.cables.find((c) => c.cable === cable.cable);
  const wall = found?.wall ?? cable.wall;
  const least = wall?.least ? `${wall.least.value.toFixed(2)} mm at its thinnest` : '';
  return shown('Wall of the jacket', wall?.mean ?? null, { metal: 'unknown', remark: least, ends: ENDS.jacket });
}

function amps({ current }: Findings, cable: CableFindings): Shown {
  const carrying = current?.cables.find((c) => c.cable === cable.cable)?.carrying ?? null;
  const remark = carrying
    ? `in still air of ${carrying.ambient_C.toFixed(0)} °C, to ${carrying.rating_C.toFixed(0)} °C`
    : '';
  return shown('Carries', carrying?.current_A ?? null, {
    metal: metalKind(cable.metal_found),
    remark,
    ends: ENDS.amps,
  });
}

/** What a card about something shows of one cable. */
export function shownOf(about: About, findings: Findings, cable: CableFindings): Shown {
  if (about === 'inside') return inside(cable);
  if (about === 'bend') return bend(findings, cable);
  return about === 'jacket' ? jacket(findings, cable) : amps(findings, cable);
}

/** Titles of the field's card. */
export const FIELD_TITLES: Readonly<Record<About, string>> = {
  inside: 'true metal area',
  bend: 'bending stiffness',
  jacket: 'wall of the jacket',
  amps: 'current in still air',
};
