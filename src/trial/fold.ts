import type { Entry } from '../journal/entry.ts';
import { CABLE_TABLE } from '../journal/kinds/cable.ts';
import { CHECK_TABLE } from '../journal/kinds/check.ts';
import { FITTING_TABLE } from '../journal/kinds/fitting.ts';
import { INSTRUMENT_TABLE } from '../journal/kinds/instrument.ts';
import { READING_TABLE } from '../journal/kinds/reading.ts';
import { RETAG_TABLE } from '../journal/kinds/retag.ts';
import { SPECIMEN_TABLE } from '../journal/kinds/specimen.ts';
import { TRIAL_TABLE } from '../journal/kinds/trial.ts';
import { inOrder, mergeEntries } from '../journal/merge.ts';
import { CellReader, cell, nameOrNull } from './cells.ts';
import { inTimeOrder } from './inTimeOrder.ts';
import { latestRows } from './latestRows.ts';
import { makeBlinding } from './makeBlinding.ts';
import { makeCable } from './makeCable.ts';
import { makeCheck } from './makeCheck.ts';
import { makeInstrument } from './makeInstrument.ts';
import { makeJudgement, makeOnPiece } from './makeJudged.ts';
import { makeNote } from './makeNote.ts';
import { makeParts, namedSeals } from './makeParts.ts';
import { makeEvidence, makeFitting, makeSpecimen } from './makePieces.ts';
import { makeReading } from './makeReading.ts';
import { makeReply } from './makeReply.ts';
import { makeRetag } from './makeRetag.ts';
import { withdrawalsOf } from './makeWithdrawal.ts';
import { remarksOn } from './remarks.ts';
import { repointJudgements, repointReadings, repointRows } from './repoint.ts';
import { rowName } from './rowName.ts';
import { SetAside } from './setAside.ts';
import { settingsOf } from './settingsOf.ts';
import { withStanding } from './standing.ts';
import type { Fitting, OnPiece, Remark, Trial, TypedRow, Withdrawal } from './trial.ts';
import { withChecks } from './withChecks.ts';

const present = <T>(thing: T | null): thing is T => thing !== null;
const typedRow = (entry: Entry): TypedRow => ({ entry: entry.id, row: entry.body });

function describedBy(entry: Entry | undefined, remarks: Remark[]) {
  const row = entry?.body ?? {};
  return {
    title: cell(row, 'title'),
    purpose: cell(row, 'purpose'),
    place: cell(row, 'place'),
    targetTemperature: new CellReader(TRIAL_TABLE, remarks).value(row, 'target_temperature'),
    openedOn: nameOrNull(row, 'opened_on'),
    disclosure: cell(row, 'disclosure'),
    described: entry ? typedRow(entry) : null,
  };
}

function nameOfTrial(entries: readonly Entry[]): string {
  const trial = entries[0]?.trial ?? '';
  const other = entries.find((entry) => entry.trial !== trial);
  if (other) throw new RangeError(`entries of two trials, "${trial}" and "${other.trial}", cannot be folded into one`);
  return trial;
}

function fittingAside(aside: SetAside, { fitting, triedWith }: Fitting): Withdrawal | null {
  const cableAside = triedWith === null ? null : aside.act('cable', triedWith);
  return cableAside ?? aside.act('fitting', fitting, triedWith);
}

/**
 * What a journal means: entries in, the trial as plain data in SI units out.
 *
 * Pure, and the same for the same set of entries in any order and with any repeats. The last entry of a key (by id) stands
 * for it; kinds of entry that this version does not know are skipped. Rows that cannot be read are left out with a remark,
 * never thrown on.
 *
 * @throws RangeError when the entries belong to more than one trial
 */
export function fold(entries: readonly Entry[]): Trial {
  const trial = nameOfTrial(entries);
  const latest = latestRows(inOrder(entries) ? entries : mergeEntries(entries));
  const remarks: Remark[] = [];
  const described = describedBy(latest.trial[0], remarks);
  const openedOn = described.openedOn ?? '';
  const timed = (rows: readonly Entry[]) => inTimeOrder(rows, openedOn);

  const cableCells = new CellReader(CABLE_TABLE, remarks);
  const specimenCells = new CellReader(SPECIMEN_TABLE, remarks);
  const fittingCells = new CellReader(FITTING_TABLE, remarks);
  const instrumentCells = new CellReader(INSTRUMENT_TABLE, remarks);
  const readingCells = new CellReader(READING_TABLE, remarks);

  const checkCells = new CellReader(CHECK_TABLE, remarks);
  const retagCells = new CellReader(RETAG_TABLE, remarks);

  const withdrawals = withdrawalsOf(latest.withdrawal, openedOn, remarks);
  const aside = new SetAside(withdrawals);

  const pieces = latest.specimen.map((entry) => makeSpecimen(entry, specimenCells));
  const cableOf = new Map(pieces.map((piece) => [piece.specimen, piece.cable]));
  const ofPiece = (specimen: string, cable = cableOf.get(specimen) ?? '') =>
    aside.act('specimen', specimen) ?? aside.act('cable', cable);
  const onPiece = ({ specimen }: OnPiece) => ofPiece(specimen);

  const strikes = timed(latest.strike).map(typedRow);
  const read = timed(latest.reading).map((entry) => makeReading(entry, readingCells, cableOf));
  const retags = timed(latest.retag)
    .map((entry) => makeRetag(entry, retagCells))
    .filter(present);
  const meant = repointReadings(withStanding(read.filter(present), strikes), retags, openedOn, cableOf);
  const readings = aside.readings(meant, ofPiece);

  const cables = latest.cable.map((entry) => makeCable(entry, cableCells));
  const fittings = latest.fitting.map((entry) => makeFitting(entry, fittingCells)).filter(present);
  const tools = latest.instrument.map((entry) => makeInstrument(entry, instrumentCells)).filter(present);
  const allChecks = timed(latest.check)
    .map((entry) => makeCheck(entry, checkCells))
    .filter(present);
  const checks = aside.standing(
    'check',
    allChecks,
    (one) => aside.act('check', one.check) ?? aside.act('instrument', one.instrument),
  );
  const standingTools = aside.standing('instrument', tools, (tool) => aside.act('instrument', tool.instrument));
  const judged = repointJudgements(timed(latest.judgement).map(makeJudgement), retags, openedOn);
  const endurance = repointRows(timed(latest.endurance).map(makeOnPiece), retags, openedOn);
  const currents = repointRows(latest.current.map(makeOnPiece), retags, openedOn);
  const sealRows = namedSeals(timed(latest.seal).map(typedRow), remarks);
  const settingRows = latest.setting.map(typedRow);

  const folded: Trial = {
    trial,
    ...described,
    cables: aside.standing('cable', cables, ({ cable }) => aside.act('cable', cable)),
    fittings: aside.standing('fitting', fittings, (one) => fittingAside(aside, one)),
    instruments: withChecks(standingTools, checks, readings, remarks),
    checks,
    specimens: aside.standing('specimen', pieces, ({ specimen, cable }) => ofPiece(specimen, cable)),
    evidence: aside.standing(
      'evidence',
      timed(latest.evidence).map(makeEvidence),
      ({ row, cable }) => aside.act('evidence', rowName('evidence', row)) ?? aside.act('cable', cable),
    ),
    readings,
    strikes,
    retags,
    judgements: aside.standing(
      'judgement',
      judged,
      ({ judgement, left, right }) => aside.act('judgement', judgement) ?? ofPiece(left) ?? ofPiece(right),
    ),
    endurance: aside.standing(
      'endurance',
      endurance,
      (one) => aside.act('endurance', rowName('endurance', one.row)) ?? onPiece(one),
    ),
    currents: aside.standing('current', currents, onPiece),
    notes: timed(latest.note).map(makeNote),
    settings: settingsOf(settingRows),
    settingRows,
    blinding: makeBlinding(timed(latest.blinding).map(typedRow)),
    parts: makeParts(sealRows, remarks),
    sealRows,
    replies: latest.reply.map(makeReply),
    withdrawals,
    aside: aside.rows,
    putAway: aside.act('trial', trial),
    remarks,
  };
  remarks.push(...remarksOn(folded));
  return folded;
}
