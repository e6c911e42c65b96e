/** Tools of the plan: adding one, and holding one against something known. */
import { OWNED_TOOLS, type OwnedTool } from '../../../../findings/starter/ownedTools.ts';
import { readKnownThing } from '../../../../journal/knownThing.ts';
import { checkDoubt } from '../../../../trial/checkDoubt.ts';
import { checksThatCount } from '../../../../trial/checksThatCount.ts';
import { asideCells } from '../../../../trial/setAside.ts';
import type { Check, Instrument, Trial } from '../../../../trial/trial.ts';
import { findUnit } from '../../../../units/unit.ts';
import { say } from '../journal/journal.ts';
import { correctRow, type Row, type Troubles } from './correct.ts';

/** Adds a tool with the step that such tools usually have; a second one of a kind gets a number. */
export async function addTool(trial: Trial, { tool, kind, resolution, unit }: OwnedTool): Promise<void> {
  const aside = asideCells(trial, 'instrument', 'instrument');
  const taken = new Set([...trial.instruments.map(({ instrument }) => instrument), ...aside]);
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

/** A question to be answered before a check is kept: it lies far outside what the tool may be off by. Empty: none. */
export function doubtOf(tool: Instrument, answers: CheckAnswers): string {
  const read = readKnownThing(rowOf(tool, answers));
  const unit = findUnit(tool.row.unit ?? '');
  if (!read.ok || unit === null) return '';
  const { known, knownError, read: found } = read.value;
  const doubt = checkDoubt(tool, { known, knownError, read: found.value });
  if (doubt === null) return '';
  const places = Math.max(0, -Math.floor(Math.log10(tool.resolution / unit.stepToSI(1)) + 1e-9));
  const shown = (si: number) => `${Number((si / unit.stepToSI(1)).toFixed(places))}\u00a0${unit.symbol}`;
  const typed = answers.read.trim();
  const inUnit = /\p{L}/u.test(typed) ? `“${typed}” is ${shown(found.value)}. ` : '';
  return `${inUnit}That is ${shown(Math.abs(doubt.off))} too ${doubt.off > 0 ? 'high' : 'low'}; by its own limit this tool is at most ${shown(doubt.allowed)} off there. A slip of a digit or a unit? Kept as it is, every reading of this tool gets that much wider, and the plan may change.`;
}

/** The checks of one tool that count, known things and zeros apart. */
export function checksOf(trial: Trial, tool: Instrument): { known: Check[]; zeros: Check[] } {
  const own = trial.checks.filter(({ instrument }) => instrument === tool.instrument);
  return { known: checksThatCount(own.filter(({ zero }) => !zero)), zeros: own.filter(({ zero }) => zero) };
}

/** How far the zeros of a tool lie apart, in its own unit; null with fewer than two. */
export function zeroSpan(tool: Instrument, zeros: readonly Check[]): number | null {
  const unit = findUnit(tool.row.unit ?? '');
  if (zeros.length < 2 || unit === null) return null;
  const read = zeros.map((zero) => zero.read);
  return (Math.max(...read) - Math.min(...read)) / unit.stepToSI(1);
}
