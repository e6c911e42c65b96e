import { consistency } from '../../methods/assay/consistency.ts';
import { contradiction } from '../../methods/assay/contradiction.ts';
import { jointAssay } from '../../methods/assay/joint.ts';
import type { Trial } from '../../trial/trial.ts';
import { areaFigure } from '../cable/areaFigure.ts';
import { rowsOfTrial } from '../rows/rowsOfTrial.ts';
import type { Measured } from '../schema.ts';

/**
 * The metal area of a few cables by everything read so far in their trial: the same figures as the closed form of
 * `findingsOf` gives, without the work that the other findings and the other cables take. For the bench, where they are
 * wanted at once after every reading.
 *
 * @param cables names; those that are not described, or of which too little was read, are missing from the answer
 */
export function areasSoFar(
  trial: Trial,
  cables: readonly string[],
  level: number,
): { cable: string; area: Measured }[] {
  const rows = rowsOfTrial(trial);
  const readable = rows.cables.filter((c) => c.rows.length > 0);
  const wanted = readable.filter((c) => cables.includes(c.cable.cable));
  if (wanted.length === 0) return [];
  const joint = jointAssay(
    readable.map((c) => c.assay),
    rows.inputs,
  );
  return wanted.flatMap((c) => {
    const assay = joint.cables[readable.indexOf(c)];
    if (contradiction(consistency(assay))) return [];
    return [{ cable: c.cable.cable, area: areaFigure(c, assay, level) }];
  });
}
