import { lnFigure, lnFigureIf } from '../../methods/assay/figures.ts';
import type { CableAssay } from '../../methods/assay/joint.ts';
import { COPPER_FAMILY } from '../../methods/metal/hypotheses.ts';
import { measuredFromLn } from '../measured.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { Measured } from '../schema.ts';
import { condition } from './condition.ts';

/** Quantities that a cable's figures rest on. */
export function rowsUsed(c: CableReadings): string[] {
  return [...new Set(c.rows.map((r) => r.quantity))];
}

/** The metal area as it is shown, mm²: plainly, or "if copper" where the readings cannot name the metal. */
export function areaFigure(c: CableReadings, assay: CableAssay, level: number): Measured {
  const ifCopper = condition(assay);
  const ln = ifCopper ? lnFigureIf(assay, 'area', COPPER_FAMILY) : lnFigure(assay, 'area');
  return measuredFromLn(ln, { scale: 1e6, unit: 'mm2', level, from: rowsUsed(c), condition: ifCopper });
}
