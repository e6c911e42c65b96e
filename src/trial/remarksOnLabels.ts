import { readSizeText } from '../units/sizeText.ts';
import { pieceSign, quantityHead } from './plainWords.ts';
import { GRAMS_IN_OUNCE } from './remarksOnValues.ts';
import type { Reading, Remark, Trial } from './trial.ts';

/** kg/m³, copper to the digits that matter here (any handbook; annealed copper is 8890). */
const COPPER_DENSITY = 8900;
/** How far an honest conductor may lie from its label's copper, either way, and still be told from ounces: lay, tin, short cables. */
const NEAR = 1.5;

/**
 * Conductors that weigh a twenty-eighth of what the label's copper would: the number fits if it was read in ounces. Works for
 * a single cable, which has no fellows. No metal is that light, so nothing honest is met by it.
 */
export function remarksOnLabels(trial: Trial): Remark[] {
  const areas = new Map<string, number>();
  for (const { cable, label } of trial.cables) {
    const size = readSizeText(label.size);
    if (size.ok && size.value.area !== null) areas.set(cable, size.value.area);
  }
  const lengths = new Map(trial.specimens.map((piece) => [piece.specimen, piece.cutLength]));
  const byPiece = new Map<string, Reading[]>();
  for (const reading of trial.readings) {
    if (reading.quantity !== 'conductor_mass' || reading.standing !== 'counted') continue;
    const area = areas.get(reading.cable);
    const length = lengths.get(reading.specimen);
    if (!area || !length) continue;
    const ratio = (reading.value * GRAMS_IN_OUNCE) / (area * length * COPPER_DENSITY);
    if (ratio < 1 / NEAR || ratio > NEAR) continue;
    byPiece.set(reading.specimen, [...(byPiece.get(reading.specimen) ?? []), reading]);
  }
  return [...byPiece].map(([piece, readings]) => ({
    code: 'looks-like-ounces',
    cable: readings[0]!.cable,
    readings: readings.map((reading) => reading.reading),
    text: `${quantityHead('conductor_mass')} of ${pieceSign(trial, piece)} is far too light for its label, and fits it if it was in ounces: check the unit.`,
  }));
}
