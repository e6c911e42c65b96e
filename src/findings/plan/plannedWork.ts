import { apartLength, contactDistanceOn } from '../../methods/decide/pieceLengths.ts';
import { minutesOf, type Step } from '../../methods/decide/workMinutes.ts';
import type { Instrument } from '../../trial/trial.ts';
import { type BenchTools, usualTool } from './benchTools.ts';
import type { WorkToTry } from './powerOfPlan.ts';
import type { PlanSettings } from './settings.ts';

/** Strands measured with the micrometer. Common practice, no source. */
export const STRANDS_MEASURED = 8;
/** Strand of flexible cable where the label says nothing, m. Common practice, no source. */
const USUAL_STRAND = 0.25e-3;

/** What of a cable decides the readings that can be planned on it. */
export interface CableToPlan {
  /** Metal area that its label claims, m². */
  area: number;
  /** m: bought, or to be bought. */
  wholeLength: number;
  /** null: the label does not say. */
  strands: number | null;
}

/** What a plan reads, before tools and lengths are put to it. */
export interface ReadingsWanted {
  weigh: boolean;
  ohms: boolean;
  strands: boolean;
  eye: boolean;
  pieces: number;
  repeats: number;
  /** m; null: as size and tools ask. */
  apartLength: number | null;
}

/** The rule for what it reaches, else the tape; a usual tape where none is listed, for everybody has one. */
function lengthTool(tools: BenchTools, length: number): Instrument {
  const reach = 0.5;
  return (length <= reach ? tools.rule : tools.tape) ?? tools.rule ?? tools.tape ?? usualTool('tape');
}

/** Length of a piece to take apart with these tools, m. */
export function apartWith(tools: BenchTools, area: number) {
  const scale = tools.scale ?? usualTool('kitchen scale');
  return apartLength(area, scale.limit.absolute, lengthTool(tools, 0).limit.absolute);
}

/** Puts tools and lengths to the readings wanted; what no listed tool can read is left out. */
export function workWith(tools: BenchTools, cable: CableToPlan, wanted: ReadingsWanted): WorkToTry {
  const { area, wholeLength, strands } = cable;
  const over = wanted.apartLength ?? apartWith(tools, area).length;
  const contacts = contactDistanceOn(wholeLength, area);
  const count = strands ?? Math.max(1, Math.round((4 * area) / (Math.PI * USUAL_STRAND ** 2)));
  const length = lengthTool(tools, over);
  return {
    mass:
      wanted.weigh && tools.scale
        ? { tool: tools.scale, length, over, pieces: wanted.pieces, repeats: wanted.repeats }
        : null,
    ohms:
      wanted.ohms && tools.meter && contacts > 0
        ? { tool: tools.meter, over: contacts, repeats: wanted.repeats }
        : null,
    strands: wanted.strands && tools.micrometer ? { tool: tools.micrometer, count, measured: STRANDS_MEASURED } : null,
    eye: wanted.eye,
  };
}

/** The readings that the settings ask for. */
export function wantedBy(settings: PlanSettings): ReadingsWanted {
  const { methods } = settings;
  return {
    weigh: methods.has('weigh'),
    ohms: methods.has('ohms'),
    strands: methods.has('strands'),
    eye: methods.has('eye'),
    pieces: settings.specimensEach,
    repeats: settings.repeats,
    apartLength: settings.apartLength,
  };
}

/** Bench minutes that some readings take on so many cables. */
export function minutesFor(work: WorkToTry, cables: number): number {
  const steps: [Step, number, number][] = [];
  if (work.ohms) steps.push(['ohms', cables, work.ohms.repeats]);
  if (work.mass) {
    const pieces = cables * work.mass.pieces;
    steps.push(['cut', pieces, 0], ['strip', pieces, 0], ['weigh', pieces, work.mass.repeats]);
  }
  if (work.strands) steps.push(['strands', cables, 1]);
  if (work.eye) steps.push(['eye', cables, 1]);
  return steps.reduce((sum, [step, pieces, repeats]) => sum + minutesOf(step, pieces, repeats), 0);
}
