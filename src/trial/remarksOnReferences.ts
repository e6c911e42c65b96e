import { cell } from './cells.ts';
import { pieceSign } from './plainWords.ts';
import { withAside } from './setAside.ts';
import type { Reading, Remark, Trial } from './trial.ts';

const CODE = 'not-yet-described';
type Known = ReadonlySet<string>;

function notDescribed(text: string, cable: string | null = null, readings: string[] = []): Remark {
  return { code: CODE, cable, readings, text };
}

/** Readings by a name that should be described somewhere and is not. */
class Missing {
  readonly pieces = new Map<string, string[]>();
  readonly tools = new Map<string, string[]>();
  readonly earlier = new Map<string, string[]>();
}

function add(missing: Map<string, string[]>, name: string, reading: string): void {
  const group = missing.get(name);
  if (group) group.push(reading);
  else missing.set(name, [reading]);
}

function missingOf(readings: readonly Reading[], pieces: Known, tools: Known, there: Known): Missing {
  const missing = new Missing();
  for (const { reading, specimen, cable, instrument, replaces } of readings) {
    // A piece that has a cable is described.
    if (cable === '' && specimen !== '' && !pieces.has(specimen)) add(missing.pieces, specimen, reading);
    if (instrument !== null && !tools.has(instrument)) add(missing.tools, instrument, reading);
    if (replaces !== null && !there.has(replaces)) add(missing.earlier, replaces, reading);
  }
  return missing;
}

/**
 * Of the readings that something else names, those that are on record. One that a strike or a correction names says so by
 * where it stands; only notes must be looked up, and few speak of a reading.
 */
function namedAndThere({ readings, notes }: Trial): Set<string> {
  const there = new Set<string>();
  const noted = new Set(notes.filter(({ about }) => about === 'reading').map(({ which }) => which));
  for (const { reading, standing, replaces } of readings)
    if (standing !== 'counted' || replaces === reading || (noted.size > 0 && noted.has(reading))) there.add(reading);
  return there;
}

/** References that point nowhere yet: on two devices, the reading may arrive before the piece that it was taken from. */
export function remarksOnReferences(trial: Trial): Remark[] {
  const cables = new Set(withAside(trial, 'cable', trial.cables).map(({ row }) => cell(row, 'cable')));
  const pieces = new Set(withAside(trial, 'specimen', trial.specimens).map(({ row }) => cell(row, 'specimen')));
  const tools = new Set(trial.instruments.map((tool) => tool.instrument));
  const toolsAside = new Set(
    trial.aside.filter(({ kind }) => kind === 'instrument').map(({ row }) => cell(row, 'instrument')),
  );
  const readings = namedAndThere(trial);
  const missing = missingOf(trial.readings, pieces, tools, readings);
  const remarks: Remark[] = [];
  for (const piece of trial.specimens) {
    if (!cables.has(piece.cable))
      remarks.push(
        notDescribed(
          `Piece ${pieceSign(trial, piece.specimen)} is of cable ${piece.cable}, which is not described yet.`,
        ),
      );
  }
  for (const [piece, ids] of missing.pieces)
    remarks.push(notDescribed(`Piece ${piece} has readings but is not described yet; they are not used.`, null, ids));
  for (const [tool, ids] of missing.tools)
    remarks.push(
      toolsAside.has(tool)
        ? {
            code: 'tool-aside',
            cable: null,
            readings: ids,
            text: `Tool ${tool} is put aside; a usual limit of error is assumed.`,
          }
        : notDescribed(`Tool ${tool} is not described yet; a usual limit of error is assumed.`, null, ids),
    );
  for (const [earlier, ids] of missing.earlier)
    remarks.push(notDescribed(`Reading ${earlier} is said to be replaced but is not on record.`, null, ids));
  for (const { check, instrument } of trial.checks)
    if (!tools.has(instrument))
      remarks.push(notDescribed(`Check ${check} is of tool ${instrument}, which is not described yet.`));
  for (const { retag, specimen, becomes } of trial.retags)
    for (const piece of [specimen, becomes])
      if (!pieces.has(piece))
        remarks.push(notDescribed(`Repair ${retag} names piece ${piece}, which is not described yet.`));
  const named = { cable: cables, specimen: pieces, reading: readings };
  for (const { note, about, which } of trial.notes)
    if (about !== 'trial' && !named[about].has(which))
      remarks.push(
        notDescribed(
          `Note ${note} is about ${about === 'specimen' ? 'piece' : about} ${which}, which is not described yet.`,
        ),
      );
  for (const strike of trial.strikes) {
    const reading = cell(strike.row, 'reading');
    if (!readings.has(reading)) remarks.push(notDescribed(`Reading ${reading} is struck out but is not on record.`));
  }
  return remarks;
}
