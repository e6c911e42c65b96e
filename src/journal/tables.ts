/** All tables of the data package, in the order in which they refer to each other: a table names only rows of tables above it, or its own. */
import type { EntryKind } from './entry.ts';
import { BLINDING_TABLE } from './kinds/blinding.ts';
import { CABLE_TABLE } from './kinds/cable.ts';
import { CHECK_TABLE } from './kinds/check.ts';
import { CURRENT_TABLE } from './kinds/current.ts';
import { ENDURANCE_TABLE } from './kinds/endurance.ts';
import { EVIDENCE_TABLE } from './kinds/evidence.ts';
import { FITTING_TABLE } from './kinds/fitting.ts';
import { INSTRUMENT_TABLE } from './kinds/instrument.ts';
import { JUDGEMENT_TABLE } from './kinds/judgement.ts';
import { NOTE_TABLE } from './kinds/note.ts';
import { READING_TABLE } from './kinds/reading.ts';
import { REPLY_TABLE } from './kinds/reply.ts';
import { RETAG_TABLE } from './kinds/retag.ts';
import { SEAL_TABLE } from './kinds/seal.ts';
import { SETTING_TABLE } from './kinds/setting.ts';
import { SPECIMEN_TABLE } from './kinds/specimen.ts';
import { STRIKE_TABLE } from './kinds/strike.ts';
import { TRIAL_TABLE } from './kinds/trial.ts';
import { WITHDRAWAL_TABLE } from './kinds/withdrawal.ts';
import type { TableShape } from './tableShape.ts';

const BY_KIND: Readonly<Record<EntryKind, TableShape>> = {
  trial: TRIAL_TABLE,
  cable: CABLE_TABLE,
  fitting: FITTING_TABLE,
  instrument: INSTRUMENT_TABLE,
  check: CHECK_TABLE,
  specimen: SPECIMEN_TABLE,
  evidence: EVIDENCE_TABLE,
  reading: READING_TABLE,
  strike: STRIKE_TABLE,
  retag: RETAG_TABLE,
  judgement: JUDGEMENT_TABLE,
  endurance: ENDURANCE_TABLE,
  current: CURRENT_TABLE,
  withdrawal: WITHDRAWAL_TABLE,
  note: NOTE_TABLE,
  setting: SETTING_TABLE,
  blinding: BLINDING_TABLE,
  seal: SEAL_TABLE,
  reply: REPLY_TABLE,
};

export const TABLES: readonly TableShape[] = Object.values(BY_KIND);

/** The table of an entry kind, or null for a kind that this version does not know. */
export function tableOfKind(kind: string): TableShape | null {
  return Object.hasOwn(BY_KIND, kind) ? BY_KIND[kind as EntryKind] : null;
}

/** The table that a file of the data package holds, whatever the case of its name, or null. */
export function tableOfFile(file: string): TableShape | null {
  const wanted = file.toLowerCase();
  return TABLES.find((table) => table.file === wanted) ?? null;
}
