import type { ErrorLimit } from '../../trial/trial.ts';
import { findUnit } from '../../units/unit.ts';

/** Digits of a limit: nobody states more. */
const DIGITS = 3;

const shown = (x: number): string => Number(x.toPrecision(DIGITS)).toString();

/**
 * A limit of error as people write it, in the unit that the tool reads: `±0.03 mm`, `±(0.03 g + 0.1 %)`, `±1 %`. Nothing for a
 * unit that is not known or a limit of nothing.
 *
 * @param unitText unit of the tool, as typed
 */
export function limitWords(
  { absolute, fraction }: Pick<ErrorLimit, 'absolute' | 'fraction'>,
  unitText: string,
): string {
  const unit = findUnit(unitText);
  if (unit === null) return '';
  const fixed = absolute > 0 ? `${shown(absolute / unit.stepToSI(1))}\u00a0${unit.symbol}` : '';
  const share = fraction > 0 ? `${shown(100 * fraction)}\u00a0%` : '';
  if (fixed === '' || share === '') return fixed || share ? `±${fixed || share}` : '';
  return `±(${fixed} + ${share})`;
}

/** Where a limit comes from: `assumed`, `as checked`, `as stated`. */
export function limitSource({ assumed, checked = false }: Pick<ErrorLimit, 'assumed' | 'checked'>): string {
  if (checked) return 'as checked';
  return assumed ? 'assumed' : 'as stated';
}
