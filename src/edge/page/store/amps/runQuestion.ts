/** The question that the answers about a run make, and the cables that it is asked of. */
import { conductorMetal, USUAL_LAYER_CONDUCTIVITY } from '../../../../methods/current/materials.ts';
import { nominalSizes } from '../../../../methods/current/runCheck/nominal.ts';
import {
  type RunCable,
  type RunQuestion,
  type RunReturn,
  UNKNOWN_BODY,
  USUAL_JOINTS,
  USUAL_RUN,
  USUAL_SUPPLY_OHMS,
} from '../../../../methods/current/runCheck/question.ts';
import { usualTaken } from '../../../../report/runTaken.ts';
import { ZERO_CELSIUS } from '../../../../units/dimension.ts';
import { FOOT } from '../../../../units/exactFactors.ts';
import { type AnswerName, FIRST_ANSWERS, type RunAnswers, TAKEN } from './runAnswers.ts';
import { typedNumber } from './typedNumber.ts';

const METRES = FOOT[0] / FOOT[1];
const MILLI = 1e-3;
const PERCENT = 100;

const metresOf = (answers: RunAnswers, text: string): number =>
  typedNumber(text) * (answers.lengthUnit === 'ft' ? METRES : 1);

/** Metres as the length's unit that was chosen has them. */
export const shownLength = ({ lengthUnit }: RunAnswers, metres: number): number =>
  lengthUnit === 'ft' ? metres / METRES : metres;

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

/** A of the overload that is asked about; null where it is the load’s own. */
export const overloadFrom = ({ overload }: RunAnswers): number | null =>
  overload.trim() === '' ? null : typedNumber(overload);
