import { consistency } from '../../methods/assay/consistency.ts';
import { contradiction } from '../../methods/assay/contradiction.ts';
import { settledCables } from '../../methods/assay/joint.ts';
import type { LaidOutBefore } from '../../methods/assay/laidOut.ts';
import type { Trial } from '../../trial/trial.ts';
import { areaFigure } from '../cable/areaFigure.ts';
import { rowsOfTrial } from '../rows/rowsOfTrial.ts';
import type { Measured } from '../schema.ts';

/** The metal area of a cable; null of one that is not described, or of which too little was read. */
export type AreaOf = (cable: string) => Measured | null;

/**
 * The metal areas by everything read so far in a trial: the same figures as the closed form of `findingsOf` gives, without
 * the work that the other findings and the other cables take. For the bench, where they are wanted at once after every
 * reading.
 *
 * @param before what was laid out for the same trial the last time; it saves time and changes no digit
 */
export function areasSoFar(trial: Trial, level: number, before?: LaidOutBefore): AreaOf {
  const rows = rowsOfTrial(trial);
  const readable = rows.cables.filter((c) => c.rows.length > 0);
  const assays = readable.map((c) => c.assay);
  const settled = settledCables(assays, rows.inputs, undefined, before);
  return (cable) => {
    const place = readable.findIndex((c) => c.cable.cable === cable);
    if (place < 0) return null;
    const assay = settled.answerFor(place);
    return contradiction(consistency(assay)) ? null : areaFigure(readable[place]!, assay, level);
  };
}
