/** What the person answers about a run, as typed and kept. Blank is always an answer: "I do not know". */
import { USUAL_RUN } from '../../../../methods/current/runCheck/question.ts';
import { ZERO_CELSIUS } from '../../../../units/dimension.ts';

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
  overload: '',
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
