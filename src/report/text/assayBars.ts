import { sizeClaim } from '../../findings/cableOutcome.ts';
import type { Claim, Measured } from '../../findings/schema.ts';
import { converted, type FigureUnits, unitSymbol } from '../figures.ts';
import { intervalAxis } from '../intervalAxis.ts';
import { metalKind } from '../metalKind.ts';
import { type AssayPage, GAP, nameColumns, rowName, shown } from './assayPage.ts';
import { axisLines, barLine } from './barLines.ts';
import { pad } from './displayWidth.ts';

/** A name beside a bar takes at most this many columns. */
const WIDEST_BESIDE = 16;
const LEAST_BESIDE = 4;

/**
 * Every cable's area as an interval on one axis, the claim's limit through all rows. The limit is drawn only where all
 * cables are held to the same one; no bars where the figures do not share a unit.
 */
export function assayBars(page: AssayPage): string[] {
  const { cables, units, glyphs, width } = page;
  const figures = cables.map(({ conductor_area: area }) =>
    area === null ? null : { ...area, ...converted(area, units) },
  );
  const unit = figures.find((figure) => figure !== null)?.unit;
  if (unit === undefined || figures.some((figure) => figure !== null && figure.unit !== unit)) return [];
  const claim = commonClaim(cables.map(sizeClaim));
  const axis = intervalAxis(
    figures,
    inUnit(claim?.required ?? null, claim?.unit ?? '', unit, units),
    inUnit(claim?.nominal ?? null, claim?.unit ?? '', unit, units),
  );
  if (axis === null) return [];
  const beside = nameColumns(page, LEAST_BESIDE, WIDEST_BESIDE);
  const chart = width - beside - GAP;
  const gap = ' '.repeat(GAP);
  const [marks, values] = axisLines(axis, chart, glyphs);
  const rows = cables.map((cable, i) => {
    const bar = barLine(figures[i]!, metalKind(cable.metal_found), axis, chart, glyphs);
    return pad(rowName(cable, page), beside, 'left', glyphs.ellipsis) + gap + bar;
  });
  const head = ' '.repeat(beside) + gap + marks;
  return [
    ...(head.trim() === '' ? [] : [head]),
    pad(shown(unitSymbol(unit), page), beside, 'right') + gap + values,
    ...rows,
  ];
}

/** The claim that all cables share; null when they are held to different ones, or to none. */
function commonClaim(claims: readonly (Claim | null)[]): Claim | null {
  const judged = claims.filter((claim) => claim !== null).filter((claim) => claim.required !== null);
  const [first] = judged;
  const same = judged.every(({ required, unit }) => required === first?.required && unit === first.unit);
  return first !== undefined && same ? first : null;
}

/** A limit in the unit of the axis; null when it is of another kind. */
function inUnit(value: number | null, from: string, to: string, units: FigureUnits): number | null {
  if (value === null) return null;
  const exact: Measured = { value, unit: from, u: 0, interval: [value, value], level: 1, from: [] };
  const shownValue = converted(exact, units);
  return unitSymbol(shownValue.unit) === unitSymbol(to) ? shownValue.value : null;
}
