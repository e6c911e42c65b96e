/** What was typed about a run, read: units behind figures, what cannot be read, and what else an answer changes. */
import { MOST_VOLTS, USUAL_JOINTS, usualCharging } from '../../../../methods/current/runCheck/question.ts';
import type { Dimension } from '../../../../units/dimension.ts';
import type { ReadOutcome } from '../../../../units/reading.ts';
import { readTypedNumber } from '../../../../units/typedNumber.ts';
import { readTypedQuantity, type TypedQuantity } from '../../../../units/typedQuantity.ts';
import { findUnit } from '../../../../units/unit.ts';
import type { AnswerName, RunAnswers } from './runAnswers.ts';
import { typedNumber } from './typedNumber.ts';

/** A kind of thing that an answer may be, in the unit that the form has for it, and what else follows from a unit of that kind. */
interface Kind {
  dimension: Dimension;
  unit: string;
  also?: Partial<RunAnswers>;
}

const VOLTS: Kind = { dimension: 'voltage', unit: 'V' };
const AMPS: Kind = { dimension: 'current', unit: 'A' };
const SHARE: Kind = { dimension: 'ratio', unit: '%' };
const MILLIOHMS: Kind = { dimension: 'resistance', unit: 'mohm' };
const WATTS: Kind = { dimension: 'power', unit: 'W' };
const FEET = new Set(['ft', 'in', 'yd']);

/** What an answer may be; the first where the text says nothing. Counts and choices have no unit. */
function kindsOf(name: AnswerName, { load, lengthUnit }: RunAnswers): readonly Kind[] {
  if (/^ohms\d$/.test(name)) return [MILLIOHMS];
  switch (name) {
    case 'steady': {
      const kinds = [
        { ...AMPS, also: { load: 'A' } },
        { ...WATTS, also: { load: 'W' } },
      ];
      return load === 'W' ? kinds.reverse() : kinds;
    }
    case 'peak':
      return [load === 'W' ? WATTS : AMPS];
    case 'length':
    case 'backLength':
      return [{ dimension: 'length', unit: lengthUnit }];
    case 'drop':
      return [
        { ...VOLTS, also: { dropUnit: 'V' } },
        { ...SHARE, also: { dropUnit: '%' } },
      ];
    case 'resting':
    case 'charging':
    case 'plus':
    case 'minus':
      return [VOLTS];
    case 'ambient':
      return [{ dimension: 'temperature', unit: '°C' }];
    case 'efficiency':
    case 'peakShare':
      return [SHARE];
    case 'peakSeconds':
      return [{ dimension: 'time', unit: 's' }];
    case 'supplyOhms':
    case 'backOhms':
      return [MILLIOHMS];
    case 'measuredAt':
    case 'overload':
      return [AMPS];
    case 'layerThickness':
      return [{ dimension: 'length', unit: 'mm' }];
    default:
      return [];
  }
}

/** The figure in another unit, without the dust of the conversion. */
const figureIn = (unit: string, { value, typedValue, unit: typed }: TypedQuantity): string =>
  String(Number((findUnit(unit)?.symbol === typed ? typedValue : findUnit(unit)!.fromSI(value)).toPrecision(12)));

/**
 * An answer with its unit behind it, `2000W`, `16 ft`, `40 °C`: the figure alone in the form's unit, and the unit where the form
 * has a choice of it. Text that is no figure with a unit of its kind stays as it was typed, to be named.
 */
export function withUnit(answers: RunAnswers, name: AnswerName, text: string): Partial<RunAnswers> {
  if (text.trim() === '' || readTypedNumber(text).ok) return { [name]: text };
  for (const { dimension, unit, also } of kindsOf(name, answers)) {
    const read = readTypedQuantity(text, dimension);
    if (!read.ok) continue;
    if (name === 'length') return inLengthUnit(answers, read.value);
    return { [name]: figureIn(unit, read.value), ...also };
  }
  return { [name]: text };
}

/** The length brings its unit into the form; the way back keeps its metres. */
function inLengthUnit(answers: RunAnswers, length: TypedQuantity): Partial<RunAnswers> {
  const lengthUnit = FEET.has(length.unit) ? 'ft' : 'm';
  const answer = { length: figureIn(lengthUnit, length), lengthUnit };
  if (lengthUnit === answers.lengthUnit) return answer;
  const back = readTypedQuantity(answers.backLength, 'length', answers.lengthUnit);
  return back.ok ? { ...answer, backLength: figureIn(lengthUnit, { ...back.value, unit: '' }) } : answer;
}

/** All answers with the units behind their figures taken into account. */
export function understood(answers: RunAnswers): RunAnswers {
  let all = answers;
  for (const [name, text] of Object.entries(answers) as [AnswerName, string][]) {
    const part = kindsOf(name, answers).length === 0 ? {} : withUnit(all, name, text);
    if (part[name] !== undefined && part[name] !== text) all = { ...all, ...part };
  }
  return all;
}

/**
 * What else an answer changes: the charging volts that stood there by themselves follow the volts at rest. Charging volts of
 * the person's own stay.
 */
export function following(before: RunAnswers, part: Partial<RunAnswers>): Partial<RunAnswers> {
  const resting = typedNumber(part.resting ?? '');
  const usual = usualCharging(resting);
  // Beyond what is answered at all nothing follows: the refusal then names what was typed.
  if (part.charging !== undefined || !(usual <= MOST_VOLTS)) return part;
  const stood = typedNumber(before.charging);
  // Volts that are usual for a bank of their own size were not typed for another one.
  const prefilled = Number.isFinite(stood) && usualCharging(stood * (12.6 / 14.2)) === stood;
  return prefilled ? { ...part, charging: String(usual) } : part;
}

/** Names of what was typed that is no number, in the order of the form. */
const NUMBERS: readonly (readonly [AnswerName, string])[] = [
  ['resting', 'The supply at rest'],
  ['charging', 'The supply while charging'],
  ['supplyOhms', 'The resistance of the source'],
  ['steady', 'The steady load'],
  ['efficiency', 'The efficiency'],
  ['peak', 'The peak'],
  ['overload', 'The overload'],
  ['peakShare', 'The share of the time at the peak'],
  ['peakSeconds', 'How long a peak lasts'],
  ['length', 'The length'],
  ['backLength', 'The length of the way back'],
  ['backOhms', 'The resistance of the body'],
  ['ambient', 'The temperature around it'],
  ['layerThickness', 'The thickness of what covers it'],
  ['drop', 'What may be lost'],
  ['plus', 'Volts lost on the plus side'],
  ['minus', 'Volts lost on the minus side'],
  ['measuredAt', 'The current while measuring'],
];

/** How a text that should be a figure was read. */
function readAnswer(answers: RunAnswers, name: AnswerName): ReadOutcome<unknown> {
  const [kind] = kindsOf(name, answers);
  const number = readTypedNumber(answers[name]);
  if (number.ok || kind === undefined) return number;
  const read = readTypedQuantity(answers[name], kind.dimension, kind.unit);
  // A figure with a unit that the form does not know here is no figure yet.
  return read.ok ? number : read;
}

/** What cannot be read, each in one sentence. */
export function unreadable(answers: RunAnswers): string[] {
  const needed: readonly AnswerName[] = ['resting', 'steady', 'length'];
  const joints = USUAL_JOINTS.flatMap((joint, i): (readonly [AnswerName, string])[] => [
    [`joint${i}` as AnswerName, `The count of joints (${joint.name})`],
    [`ohms${i}` as AnswerName, `The milliohms of a joint (${joint.name})`],
  ]);
  return [...NUMBERS, ...joints].flatMap(([name, called]) => {
    if (answers[name].trim() === '') return needed.includes(name) ? [`${called} is blank; a number is needed.`] : [];
    const read = readAnswer(answers, name);
    if (read.ok) return [];
    return [`${called} is ${read.found}; a number was expected.${read.advice ? ` ${read.advice}` : ''}`];
  });
}
