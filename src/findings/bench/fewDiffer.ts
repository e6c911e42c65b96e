import { ownLimitOf } from '../../trial/checkDoubt.ts';
import type { Reading, Trial } from '../../trial/trial.ts';
import { typedText } from '../../units/typedText.ts';
import type { CandidateReading, Question } from './questionFor.ts';

/** A reading about to be kept, in SI. */
export interface Candidate {
  value: number;
  /** One step of it as typed. */
  step: number;
  /** Distance between the contacts, m; null when not said. */
  contacts: number | null;
  /** K; null when not said. */
  temperature: number | null;
}

/** Quantities of which one piece has one value, however often it is read. */
const SAME_EACH_TIME: ReadonlySet<string> = new Set([
  'resistance',
  'specimen_length',
  'conductor_length',
  'specimen_mass',
  'conductor_mass',
  'jacket_mass',
  'submerged_mass',
  'outer_diameter',
  'strand_count',
]);
/** Clips set anew, a jaw held otherwise or a strand counted twice make less than this share between two readings. Ours. */
const BY_HAND = 0.05;
/** Copper changes by this share of its ohms per kelvin, rounded up: temperatures apart explain readings apart. */
const PER_KELVIN = 0.004;
/** From more fellows than this on, their own scatter tells what stands far off. */
const FEW = 4;

/** How far off a reading of that size may be by the tool it was read with, SI; 0 where no tool is named. */
function limitAt({ instruments }: Trial, instrument: string, value: number): number {
  const tool = instruments.find((each) => each.instrument === instrument);
  if (tool === undefined) return 0;
  const { absolute, fraction } = ownLimitOf(tool);
  return absolute + fraction * Math.abs(value);
}

/** How far two readings lie apart beyond what tools, hands and warmth explain, as a share of the earlier; 0 where they agree. */
function shareApart(trial: Trial, c: CandidateReading, now: Candidate, before: Reading): number {
  // Ohms over two distances are compared per metre.
  const scale =
    c.quantity === 'resistance' && now.contacts !== null && before.atLength !== null
      ? now.contacts / before.atLength
      : 1;
  const expected = before.value * scale;
  const tools =
    limitAt(trial, c.instrument ?? '', now.value) + limitAt(trial, before.instrument ?? '', before.value) * scale;
  const warmer =
    c.quantity === 'resistance' && now.temperature !== null && before.temperature !== null
      ? PER_KELVIN * Math.abs(now.temperature - before.temperature)
      : 0;
  const explained = Math.max(tools, BY_HAND * expected) + warmer * expected + now.step + before.step * scale;
  const apart = Math.abs(now.value - expected);
  return apart > explained ? apart / expected : 0;
}

/** Whether two readings can be held against each other: of the same set, clipped the same way round, both over a distance or neither. */
const isComparable = (c: CandidateReading, now: Candidate) => (r: Reading) =>
  r.standing === 'counted' &&
  r.specimen === c.specimen &&
  r.quantity === c.quantity &&
  r.position === (c.position ?? '') &&
  (r.atLength === null) === (now.contacts === null);

/**
 * Whether a reading lies apart from each of the few readings of the same piece by more than their tools may be off, where
 * they are too few to tell by their own scatter. Two of them say that one is off, and not which.
 *
 * Not for quantities that differ from one place of a piece to the next (walls, strands, bundles), nor for bending.
 */
export function fewDiffer(trial: Trial, c: CandidateReading, name: string, now: Candidate): Question | null {
  if (!SAME_EACH_TIME.has(c.quantity)) return null;
  const fellows = trial.readings.filter(isComparable(c, now));
  if (fellows.length === 0 || fellows.length > FEW) return null;
  const [nearest] = fellows
    .map((before) => ({ before, share: shareApart(trial, c, now, before) }))
    .sort((a, b) => a.share - b.share);
  if (nearest === undefined || nearest.share === 0) return null;
  const { row } = nearest.before;
  const other = fellows.length === 1 ? 'the reading before' : 'the nearest one before';
  const percent = Math.round(nearest.share * 100);
  return {
    code: 'differ',
    text: `The ${name}, ${typedText(c.value, c.unit)}, and ${other}, ${typedText(row.value ?? '', row.unit ?? '')}, differ by ${percent} %, more than tool and hand explain: one of them is off. Keep it, or measure again?`,
  };
}
