import { cell } from './cells.ts';
import type { Reading, Remark, Trial } from './trial.ts';

const CODE = 'not-yet-described';

function notDescribed(text: string, cable: string | null = null, readings: string[] = []): Remark {
  return { code: CODE, cable, readings, text };
}

/** Groups readings by a name that should be described somewhere and is not. */
function byMissing(readings: readonly Reading[], nameOf: (reading: Reading) => string | null, known: Set<string>) {
  const missing = new Map<string, string[]>();
  for (const reading of readings) {
    const name = nameOf(reading);
    if (name === null || name === '' || known.has(name)) continue;
    const group = missing.get(name);
    if (group) group.push(reading.reading);
    else missing.set(name, [reading.reading]);
  }
  return missing;
}

/** References that point nowhere yet: on two devices, the reading may arrive before the piece that it was taken from. */
export function remarksOnReferences(trial: Trial): Remark[] {
  const cables = new Set(trial.cables.map((cable) => cable.cable));
  const pieces = new Set(trial.specimens.map((piece) => piece.specimen));
  const tools = new Set(trial.instruments.map((tool) => tool.instrument));
  const readings = new Set(trial.readings.map((reading) => reading.reading));
  const remarks: Remark[] = [];
  for (const piece of trial.specimens) {
    if (!cables.has(piece.cable))
      remarks.push(notDescribed(`Piece ${piece.specimen} is of cable ${piece.cable}, which is not described yet.`));
  }
  for (const [piece, ids] of byMissing(trial.readings, (reading) => reading.specimen, pieces))
    remarks.push(notDescribed(`Piece ${piece} has readings but is not described yet; they are not used.`, null, ids));
  for (const [tool, ids] of byMissing(trial.readings, (reading) => reading.instrument, tools))
    remarks.push(notDescribed(`Tool ${tool} is not described yet; a usual limit of error is assumed.`, null, ids));
  for (const [earlier, ids] of byMissing(trial.readings, (reading) => cell(reading.row, 'replaces'), readings))
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
