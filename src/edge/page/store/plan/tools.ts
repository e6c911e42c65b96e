/** Tools of the plan: adding one, and holding one against something known. */
import { OWNED_TOOLS, type OwnedTool } from '../../../../findings/starter/ownedTools.ts';
import { readKnownThing } from '../../../../journal/knownThing.ts';
import type { Check, Instrument, Trial } from '../../../../trial/trial.ts';
import { findUnit } from '../../../../units/unit.ts';
import { say } from '../journal/journal.ts';
import { correctRow, type Row, type Troubles } from './correct.ts';

/** Adds a tool with the step that such tools usually have; a second one of a kind gets a number. */
export async function addTool(trial: Trial, { tool, kind, resolution, unit }: OwnedTool): Promise<void> {
  const taken = new Set(trial.instruments.map(({ instrument }) => instrument));
  let instrument = tool;
  for (let number = 2; taken.has(instrument); number++) instrument = `${tool} ${number}`;
  await say('instrument', { instrument, kind, resolution, unit });
}

/** Tools that can be added, those of a kind that is not there yet first. */
export function toolsToAdd(trial: Trial): OwnedTool[] {
  const there = new Set(trial.instruments.map(({ kind }) => kind.toLowerCase()));
  return [...OWNED_TOOLS].sort((a, b) => Number(there.has(a.kind)) - Number(there.has(b.kind)));
}

export interface CheckAnswers {
  against: string;
  known: string;
  knownError: string;
  read: string;
  temperature: string;
  note: string;
}

const NAME_BYTES = 3;

/** A name that two devices will not both give. */
function checkName(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(NAME_BYTES));
  return `check-${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}

function rowOf(tool: Instrument, { against, known, knownError, read, temperature, note }: CheckAnswers): Row {
  const zero = against === 'zero';
  return {
    check: checkName(),
    instrument: tool.instrument,
    against,
    known_value: zero ? '' : known,
    unit: tool.row.unit ?? '',
    known_error: zero ? '' : knownError,
    read_value: read,
    at: new Date().toISOString(),
    temperature,
    note,
  };
}

/** Says that a tool was held against something known; answers with what stands in the way, by column. */
export function sayCheck(tool: Instrument, answers: CheckAnswers): Promise<Troubles | null> {
  const row = rowOf(tool, answers);
  if (answers.read.trim() === '')
    return Promise.resolve({ read_value: { found: 'nothing', expected: 'what the tool read', advice: '' } });
  return correctRow('check', {}, row);
}

/** How far off the tool was by these answers, in its own unit; null while they cannot be read. */
export function offBy(tool: Instrument, answers: CheckAnswers): number | null {
  const read = readKnownThing(rowOf(tool, answers));
  const unit = findUnit(tool.row.unit ?? '');
  if (!read.ok || unit === null) return null;
  return (read.value.read.value - read.value.known) / unit.stepToSI(1);
}

/** The checks of one tool, known things and zeros apart. */
export function checksOf(trial: Trial, tool: Instrument): { known: Check[]; zeros: Check[] } {
  const own = trial.checks.filter(({ instrument }) => instrument === tool.instrument);
  return { known: own.filter(({ zero }) => !zero), zeros: own.filter(({ zero }) => zero) };
}

/** How far the zeros of a tool lie apart, in its own unit; null with fewer than two. */
export function zeroSpan(tool: Instrument, zeros: readonly Check[]): number | null {
  const unit = findUnit(tool.row.unit ?? '');
  if (zeros.length < 2 || unit === null) return null;
  const read = zeros.map((zero) => zero.read);
  return (Math.max(...read) - Math.min(...read)) / unit.stepToSI(1);
}
