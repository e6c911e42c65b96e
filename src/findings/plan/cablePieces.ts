import { bundleDiameter } from '../../methods/decide/conductorSize.ts';
import { type CutList, cutList, type PieceKind } from '../../methods/decide/cutList.ts';
import { bendLength, contactDistanceOn, type Stranding } from '../../methods/decide/pieceLengths.ts';
import type { Cable, Specimen } from '../../trial/trial.ts';
import type { BenchTools } from './benchTools.ts';
import { apartWith } from './plannedWork.ts';
import type { PlanSettings } from './settings.ts';

/** One piece of a cable, on record or still to be cut. */
export interface PlannedPiece {
  specimen: string;
  cable: string;
  kind: PieceKind | '';
  /** m; null for the whole bought length. */
  length: number | null;
  /** As the plan would cut it now, which differs where settings changed since; null when the plan asks for no such piece. */
  planned: { length: number | null; cutFrom: string | null } | null;
  /** Name of the piece that it is cut from; null for the whole. */
  cutFrom: string | null;
  taken: string;
  why: string;
  code: string;
  /** Already among the trial's specimens. */
  onRecord: boolean;
}

/** Area that pieces are planned for where the label gives none, m²: between 1 and 1/0 AWG. */
export const AREA_WHEN_UNSAID = 50e-6;
/** Ohms of heavy cable want a metre between the contacts (by simulation: 1 m gives ±0.9 % where 150 mm gives ±2.7 %). */
const LEAST_BETWEEN_CONTACTS = 1;
/** Strands thinner than this bend like fine stranding, thicker than that like coarse, m. Common practice, no source. */
const FINE_BELOW = 0.16e-3;
const COARSE_ABOVE = 0.35e-3;

/** How finely a cable is stranded, as far as its label says. */
export function strandingOf({ label }: Cable, area: number): Stranding {
  const { strandDiameter, strands } = label;
  const diameter = strandDiameter ?? (strands ? Math.sqrt((4 * area) / (Math.PI * strands)) : null);
  if (diameter === null) return 'unknown';
  if (diameter <= FINE_BELOW) return 'fine';
  return diameter >= COARSE_ABOVE ? 'coarse' : 'unknown';
}

/** Least whole length with a metre between the voltage contacts, m. */
function leastWhole(area: number): number {
  const ends = 1 - contactDistanceOn(1, area);
  return LEAST_BETWEEN_CONTACTS + ends;
}

/**
 * What to cut from one cable.
 *
 * @param area claimed metal area, m²
 */
export function cutListOf(cable: Cable, area: number, tools: BenchTools, settings: PlanSettings): CutList {
  const { methods } = settings;
  const outer = cable.label.outerDiameter ?? null;
  const bend =
    settings.bendLength === null
      ? bendLength(area, strandingOf(cable, area), outer)
      : { length: settings.bendLength, why: 'as set' };
  const apart =
    settings.apartLength === null ? apartWith(tools, area) : { length: settings.apartLength, why: 'as set' };
  const isControl = cable.role === 'control';
  const opened = methods.has('weigh') || methods.has('strands') || methods.has('wall');
  return cutList({
    bend: { ...bend, count: isControl ? 0 : settings.bendPieces },
    apart: { ...apart, count: opened ? settings.specimensEach : 0 },
    abuse: {
      length: settings.abuseLength,
      count: isControl ? 0 : settings.abusePieces,
      why: 'a fresh jacket for each abuse',
    },
    kept: isControl ? 0 : settings.keptLength,
    sawLoss: settings.sawLoss,
    leastWhole: methods.has('ohms') ? leastWhole(area) : 0,
  });
}

const SUFFIX: Readonly<Record<PieceKind, string>> = { whole: 'whole', bend: 'b', apart: 'a', abuse: 'x', kept: 'kept' };

function nameOf(cable: string, kind: PieceKind, number: number, taken: ReadonlySet<string>): string {
  const numbered = kind !== 'whole' && kind !== 'kept';
  const plain = `${cable}-${SUFFIX[kind]}${numbered ? number : ''}`;
  let name = plain;
  for (let more = 2; taken.has(name); more++) name = `${plain}-${more}`;
  return name;
}

const recorded = (s: Specimen): PlannedPiece => ({
  specimen: s.specimen,
  cable: s.cable,
  kind: s.kind,
  length: s.cutLength,
  planned: null,
  cutFrom: s.cutFrom,
  taken: s.row.taken_from ?? '',
  why: '',
  code: s.code,
  onRecord: true,
});

/**
 * The pieces of one cable: those on record as they are, and those of the cut list that are not there yet, with names. The
 * first piece on record of a kind stands for the first of the list, and so on.
 *
 * @param names every specimen's name in the trial: a new piece takes none of them
 */
export function piecesOf(
  cable: string,
  list: CutList,
  specimens: readonly Specimen[],
  names: ReadonlySet<string>,
): PlannedPiece[] {
  const own = specimens.filter((s) => s.cable === cable);
  const taken = new Set(names);
  const pieces = list.pieces.map((piece): PlannedPiece => {
    const there = own.filter((s) => s.kind === piece.kind)[piece.number - 1];
    if (there) return { ...recorded(there), planned: { length: piece.length, cutFrom: null }, why: piece.why };
    const specimen = nameOf(cable, piece.kind, piece.number, taken);
    taken.add(specimen);
    return {
      specimen,
      cable,
      kind: piece.kind,
      length: piece.length,
      planned: { length: piece.length, cutFrom: null },
      cutFrom: null,
      taken: piece.taken ?? '',
      why: piece.why,
      code: '',
      onRecord: false,
    };
  });
  const listed = new Set(pieces.map((p) => p.specimen));
  const further = own.filter((s) => !listed.has(s.specimen)).map(recorded);
  const withParents = pieces.map((p, i) => {
    const place = list.pieces[i]!.cutFrom;
    if (place === null) return p;
    const parent = pieces[place]!.specimen;
    const planned = { length: list.pieces[i]!.length, cutFrom: parent };
    return { ...p, planned, cutFrom: p.onRecord ? p.cutFrom : parent };
  });
  return [...withParents, ...further];
}

/** The row that puts a planned piece on record, blanks left out. Lengths in mm. */
export function specimenRow(piece: PlannedPiece): Record<string, string> {
  const row = {
    specimen: piece.specimen,
    cable: piece.cable,
    code: piece.code,
    cut_length: piece.length === null ? '' : String(Math.round(piece.length * 1000)),
    cut_length_unit: piece.length === null ? '' : 'mm',
    cut_from: piece.cutFrom ?? '',
    kind: piece.kind,
    taken_from: piece.taken,
  };
  return Object.fromEntries(Object.entries(row).filter(([, cell]) => cell !== ''));
}

/** Outer diameter to wrap a label round, m: claimed, or guessed from the bundle with a usual jacket. */
export function outerDiameterOf(cable: Cable, area: number): number {
  const usualWall = 2.5e-3;
  return cable.label.outerDiameter ?? bundleDiameter(area) + 2 * usualWall;
}
