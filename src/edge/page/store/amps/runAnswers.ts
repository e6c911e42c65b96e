/** What the person answers about a run, as typed, and the question that it makes. Blank is always an answer: "I do not know". */
import { conductorMetal, USUAL_LAYER_CONDUCTIVITY } from '../../../../methods/current/materials.ts';
import { nominalSizes } from '../../../../methods/current/runCheck/nominal.ts';
import {
  MOST_VOLTS,
  type RunCable,
  type RunQuestion,
  type RunReturn,
  UNKNOWN_BODY,
  USUAL_JOINTS,
  USUAL_RUN,
  USUAL_SUPPLY_OHMS,
  usualCharging,
} from '../../../../methods/current/runCheck/question.ts';
import { usualTaken } from '../../../../report/runTaken.ts';
import { ZERO_CELSIUS } from '../../../../units/dimension.ts';
import { FOOT } from '../../../../units/exactFactors.ts';

/** Every answer with what stands there at first. */
export const FIRST_ANSWERS = {
  source: 'battery',
  resting: '12.6',
  charging: '14.2',
  supplyOhms: '',
  load: 'A',
  steady: '80',
  efficiency: '',
  peak: '',
  peakShare: '',
  peakSeconds: '',
  lengthUnit: 'm',
  length: '4',
  back: 'same',
  backLength: '',
  backOhms: '',
  backSize: '2 AWG',
  joint0: '4',
  joint1: '1',
  joint2: '0',
  joint3: '1',
  joint4: '0',
  ohms0: '',
  ohms1: '',
  ohms2: '',
  ohms3: '',
  ohms4: '',
  ambient: '',
  bundle: '1',
  layer: 'none',
  layerThickness: '5',
  rating: '',
  dropUnit: 'V',
  drop: '',
  plus: '',
  minus: '',
  measuredAt: '',
  installed: '',
  sizes: 'awg',
  profile: '',
} as const;

export type AnswerName = keyof typeof FIRST_ANSWERS;
export type RunAnswers = Record<AnswerName, string>;

/** What is taken where nobody knows. Common practice, no source; each is said on the page. */
export const TAKEN = {
  /** °C */
  ambient: USUAL_RUN.ambient - ZERO_CELSIUS,
  /** V */
  drop: USUAL_RUN.drop,
  /** mm of carpet or trim */
  layer: 5,
};

const METRES = FOOT[0] / FOOT[1];
const MILLI = 1e-3;
const PERCENT = 100;

/** A number as people type one: comma or point, blanks and a minus sign of any kind; NaN for what is none. */
export function typedNumber(text: string): number {
  const plain = text.trim().replace(/−/g, '-').replace(',', '.');
  return plain === '' ? Number.NaN : Number(plain);
}

/** Units that people type behind a figure, by the answer's own; what they come to in it is worked out in `withUnit`. */
const TYPED_UNIT =
  /^([+-]?[\d.]+)\s*(k?w|m?a|watts?|amps?|m?v|volts?|mm|cm|m|metres?|meters?|ft|feet|foot|['′]|mΩ|mohm|°?c|%|s|sec(?:onds)?)$/iu;

/**
 * An answer with its unit behind it, `2000W`, `16 ft`, `40 °C`: the figure alone, and the unit where the form has a choice of it.
 * Text that is no figure with a known unit stays as it was typed, to be named.
 */
export function withUnit(name: AnswerName, text: string): Partial<RunAnswers> {
  const match = TYPED_UNIT.exec(text.trim().replace(/−/g, '-').replace(',', '.'));
  if (!match) return { [name]: text };
  const [, figure = '', written = ''] = match;
  const unit = written.toLowerCase();
  const is = (pattern: RegExp) => pattern.test(unit);
  if (name === 'steady' || name === 'peak') {
    if (is(/^(w|watts?|kw)$/)) return { [name]: unit === 'kw' ? scaled(figure, 1000) : figure, load: 'W' };
    if (is(/^(a|amps?)$/)) return { [name]: figure, load: 'A' };
  }
  if (name === 'length' || name === 'backLength') {
    if (is(/^(ft|feet|foot|['′])$/)) return { [name]: figure, lengthUnit: 'ft' };
    if (is(/^(m|metres?|meters?)$/)) return { [name]: figure, lengthUnit: 'm' };
    if (unit === 'cm') return { [name]: scaled(figure, 0.01), lengthUnit: 'm' };
  }
  if (name === 'drop' && is(/^(v|volts?|mv|%)$/))
    return { drop: unit === 'mv' ? scaled(figure, MILLI) : figure, dropUnit: unit === '%' ? '%' : 'V' };
  if (VOLTS.includes(name) && is(/^(v|volts?)$/)) return { [name]: figure };
  if (VOLTS.includes(name) && unit === 'mv') return { [name]: scaled(figure, MILLI) };
  if (name === 'ambient' && is(/^°?c$/)) return { [name]: figure };
  if ((name === 'efficiency' || name === 'peakShare') && unit === '%') return { [name]: figure };
  if (name === 'peakSeconds' && is(/^s/)) return { [name]: figure };
  if ((name === 'supplyOhms' || name === 'backOhms') && is(/^(mω|mohm)$/)) return { [name]: figure };
  if (name === 'measuredAt' && is(/^(a|amps?)$/)) return { [name]: figure };
  if (name === 'layerThickness' && unit === 'mm') return { [name]: figure };
  return { [name]: text };
}

const VOLTS: readonly AnswerName[] = ['resting', 'charging', 'plus', 'minus'];
const scaled = (figure: string, by: number): string => String(Number((Number(figure) * by).toPrecision(12)));

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

/** What was left to the usual, each in a few words. */
export function takenFrom(a: RunAnswers): string[] {
  const blank = (name: AnswerName) => a[name].trim() === '';
  return usualTaken(
    { watts: a.load === 'W', peak: !blank('peak'), resting: typedNumber(a.resting) },
    {
      peakSeconds: blank('peakSeconds'),
      peakShare: blank('peakShare'),
      efficiency: blank('efficiency'),
      charging: a.charging === FIRST_ANSWERS.charging && a.resting === FIRST_ANSWERS.resting,
      ambient: blank('ambient'),
      drop: blank('drop'),
      joints: USUAL_JOINTS.every(
        (joint, i) => blank(`ohms${i}` as AnswerName) && Number(a[`joint${i}` as AnswerName]) === joint.count,
      ),
      body: a.back === 'body' && blank('backOhms'),
    },
  );
}

/** The answers that were kept, with what is missing filled in. */
export function answersFrom(kept: string | undefined): RunAnswers {
  try {
    const read: unknown = JSON.parse(kept ?? '{}');
    if (typeof read !== 'object' || read === null) return { ...FIRST_ANSWERS };
    const texts = Object.entries(read).filter(
      ([name, text]) => name in FIRST_ANSWERS && typeof text === 'string' && text.length < 1_000_000,
    );
    return { ...FIRST_ANSWERS, ...Object.fromEntries(texts) };
  } catch {
    return { ...FIRST_ANSWERS };
  }
}

export const metresOf = (answers: RunAnswers, text: string): number =>
  typedNumber(text) * (answers.lengthUnit === 'ft' ? METRES : 1);

/** Metres as the length's unit that was chosen has them. */
export const shownLength = ({ lengthUnit }: RunAnswers, metres: number): number =>
  lengthUnit === 'ft' ? metres / METRES : metres;

/** Names of what was typed that is no number, in the order of the form. */
const NUMBERS: readonly (readonly [AnswerName, string])[] = [
  ['resting', 'The supply at rest'],
  ['charging', 'The supply while charging'],
  ['supplyOhms', 'The resistance of the source'],
  ['steady', 'The steady load'],
  ['efficiency', 'The efficiency'],
  ['peak', 'The peak'],
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

/** What cannot be read, each in one sentence. */
export function unreadable(answers: RunAnswers): string[] {
  const needed: readonly AnswerName[] = ['resting', 'steady', 'length'];
  const joints = USUAL_JOINTS.flatMap((joint, i): (readonly [AnswerName, string])[] => [
    [`joint${i}` as AnswerName, `The count of joints (${joint.name})`],
    [`ohms${i}` as AnswerName, `The milliohms of a joint (${joint.name})`],
  ]);
  return [...NUMBERS, ...joints].flatMap(([name, called]) => {
    const typed = answers[name].trim();
    if (typed === '') return needed.includes(name) ? [`${called} is blank; a number is needed.`] : [];
    return Number.isFinite(typedNumber(typed)) ? [] : [`${called} is "${typed}"; a number was expected.`];
  });
}

const otherwise = (text: string, usual: number): number => (text.trim() === '' ? usual : typedNumber(text));

/** The question that the answers make. Numbers that cannot be read become NaN: ask `unreadable` first. */
export function questionFrom(answers: RunAnswers): RunQuestion {
  const a = answers;
  const resting = typedNumber(a.resting);
  const supplyOhms = typedNumber(a.supplyOhms) * MILLI;
  const length = metresOf(a, a.length);
  return {
    supply: {
      resting,
      charging: a.charging.trim() === '' ? null : typedNumber(a.charging),
      ohms: a.supplyOhms.trim() === '' ? USUAL_SUPPLY_OHMS : { value: supplyOhms, low: supplyOhms, high: supplyOhms },
      direct: a.source !== 'mains',
    },
    load: {
      kind: a.load === 'W' ? 'watts' : 'amps',
      steady: typedNumber(a.steady),
      peak:
        a.peak.trim() === ''
          ? null
          : {
              amount: typedNumber(a.peak),
              share: otherwise(a.peakShare, PERCENT * USUAL_RUN.peakShare) / PERCENT,
              seconds: otherwise(a.peakSeconds, USUAL_RUN.peakSeconds),
            },
      efficiency: a.load === 'W' ? otherwise(a.efficiency, PERCENT * USUAL_RUN.efficiency) / PERCENT : 1,
    },
    length,
    back: backOf(a, length),
    joints: jointsOf(a),
    surroundings: {
      ambient: otherwise(a.ambient, TAKEN.ambient) + ZERO_CELSIUS,
      bundle: Number(a.bundle) || 1,
      layer: layerOf(a),
    },
    allowedDrop: allowedOf(a, resting),
    measured:
      a.plus.trim() === '' && a.minus.trim() === ''
        ? null
        : {
            plus: otherwise(a.plus, 0),
            minus: otherwise(a.minus, 0),
            current: otherwise(a.measuredAt, 0),
            cable: a.installed === '' ? null : a.installed,
          },
  };
}

const layerOf = ({ layer, layerThickness }: RunAnswers) =>
  layer === 'none'
    ? null
    : {
        thickness: (layer === 'unknown' ? TAKEN.layer : otherwise(layerThickness, TAKEN.layer)) * MILLI,
        conductivity: USUAL_LAYER_CONDUCTIVITY,
      };

const allowedOf = ({ drop, dropUnit }: RunAnswers, resting: number): number => {
  if (drop.trim() === '') return TAKEN.drop / resting;
  return dropUnit === '%' ? typedNumber(drop) / PERCENT : typedNumber(drop) / resting;
};

function backOf(a: RunAnswers, length: number): RunReturn {
  const back = a.backLength.trim() === '' ? length : metresOf(a, a.backLength);
  if (a.back === 'body') {
    return a.backOhms.trim() === ''
      ? { kind: 'body unknown', ...UNKNOWN_BODY }
      : { kind: 'body measured', ohms: typedNumber(a.backOhms) * MILLI };
  }
  if (a.back !== 'other') return { kind: 'same cable', length: back };
  const sizes = backSizes();
  const other = sizes.find((size) => size.name === a.backSize) ?? sizes[0]!;
  return {
    kind: 'other cable',
    length: back,
    ohmsPerMetre: other.ohmsPerMetre.value,
    metal: conductorMetal('copper'),
  };
}

/** K: the rating of a size does not matter to its ohms. */
const ANY_RATING = 333.15;
/** Sizes that another cable may lead back in. */
export const backSizes = (): RunCable[] => [...nominalSizes('awg', ANY_RATING), ...nominalSizes('mm2', ANY_RATING)];

function jointsOf(a: RunAnswers): RunQuestion['joints'] {
  return USUAL_JOINTS.map(({ name, milliohms }, i) => ({
    name,
    count: otherwise(a[`joint${i}` as AnswerName], 0),
    ohms: otherwise(a[`ohms${i}` as AnswerName], milliohms) * MILLI,
  }));
}

/** The candidates with the rating that was stated for all; with their own where none was. */
export function withRating(cables: readonly RunCable[], { rating }: RunAnswers): RunCable[] {
  const celsius = typedNumber(rating);
  if (!Number.isFinite(celsius)) return [...cables];
  return cables.map((cable) => ({ ...cable, rating: celsius + ZERO_CELSIUS, ratingAssumed: false }));
}

/** Nominal sizes beside them, rated as the lowest of them and at the usual lowest at most. */
export function nominalFor(cables: readonly RunCable[], { sizes, rating }: RunAnswers): RunCable[] {
  if (sizes !== 'awg' && sizes !== 'mm2') return [];
  const stated = typedNumber(rating) + ZERO_CELSIUS;
  return nominalSizes(sizes, Number.isFinite(stated) ? stated : Math.min(ANY_RATING, ...cables.map((c) => c.rating)));
}
