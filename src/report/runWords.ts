import type { RunAnswer } from '../methods/current/runCheck/answer.ts';
import type { Between, RunQuestion } from '../methods/current/runCheck/question.ts';
import type { RunCheck } from '../methods/current/runCheck/runCheck.ts';
import { ZERO_CELSIUS } from '../units/dimension.ts';
import { inTheWayText } from './runInTheWay.ts';
import { andList } from './words/andList.ts';

const KINDS = {
  'same cable': 'back by the same cable',
  'other cable': 'back by another cable',
  'body measured': 'back by the body, as measured',
  'body unknown': 'back by the body, its ohms unknown',
} as const;

/**
 * `600 W steady, 1500 W at its peak for 30 s, 20 % of the time, 5.0 m out, back by the same cable, from 12.6 V`
 *
 * @param taken what nobody stated and was taken as usual, each in a few words.
 */
export function questionText(q: RunQuestion, taken: readonly string[] = []): string {
  const unit = q.load.kind === 'watts' ? 'W' : 'A';
  const peak = q.load.peak
    ? `, ${plain(q.load.peak.amount)} ${unit} at its peak for ${plain(q.load.peak.seconds)} s, ${plain(100 * q.load.peak.share)} % of the time`
    : '';
  const gives =
    q.load.kind === 'watts' && q.load.efficiency < 1 ? `, ${plain(100 * q.load.efficiency)} % of what it draws` : '';
  const charging = q.supply.charging === null ? '' : `, ${plain(q.supply.charging)} V charging`;
  return `${plain(q.load.steady)} ${unit} steady${peak}${gives}, ${q.length.toFixed(1)} m out, ${KINDS[q.back.kind]}, from ${plain(q.supply.resting)} V at rest${charging}, in ${(q.surroundings.ambient - ZERO_CELSIUS).toFixed(0)} °C; ${(100 * q.allowedDrop).toFixed(1)} % may be lost${q.load.peak ? ' at the peak' : ''}.${guessed(taken)}`;
}

const guessed = (taken: readonly string[]): string =>
  taken.length === 0 ? '' : ` Not stated, so taken as usual: ${andList([...taken])}.`;

const plain = (x: number): string => String(Number(x.toPrecision(4)));

/** Middle and ends: `11.2 (10.9 to 11.5)`; the middle alone where the ends say the same; a dash where there is no figure. */
export function betweenText({ value, low, high }: Between, decimals: number): string {
  if (Number.isNaN(value)) return '—';
  const [v, a, b] = [value, low, high].map((x) => x.toFixed(decimals));
  return a === b ? v! : `${v} (${Number.isNaN(low) ? '—' : a} to ${Number.isNaN(high) ? '—' : b})`;
}

/** What one cable does, by name: first by one run, then by as many as do. */
export function answerText(a: RunAnswer): string {
  if (a.tooHot)
    return `${a.cable.name}: the surroundings alone are as hot as the ${(a.cable.rating - ZERO_CELSIUS).toFixed(0)} °C that its jacket bears; nothing may flow in it there.`;
  return `${a.cable.name}: ${lower(fuseText(a))}`;
}

/** Whether one run does and its fuse, then how many side by side do with the fuse of each; empty where nothing may flow. */
export function fuseText(a: RunAnswer): string {
  const { fuse, fuseEach, parallel, feeds } = a;
  if (a.tooHot) return '';
  if (parallel === 1)
    return fuse.rating === null ? `One run does, but ${lower(fuse.text)}` : `One run does: fuse ${fuse.text}`;
  const one = singleText(a);
  if (parallel === null || fuseEach === null) return `${one}. ${inTheWayText(a)} No fuse is named.`;
  const own = feeds === 'yes' && fuse.rating !== null ? `; its fuse would be ${fuse.rating} A` : '';
  if (fuseEach.rating === null) return `${one}${own}. ${parallel} side by side do, but ${lower(fuseEach.text)}`;
  const largest = fuseEach.fits[fuseEach.fits.length - 1]!;
  const range = largest > fuseEach.rating ? ` (up to ${largest} A would do)` : '';
  return `${one}${own}. ${parallel} side by side do, each with its own ${fuseEach.rating} A fuse${range}.`;
}

/** `One run falls short on volts and is not settled on heat` */
function singleText({ feeds, outcomes: { drop, heat } }: RunAnswer): string {
  if (feeds === 'no') return 'One run cannot feed this load: more is asked for than can come through';
  const verb = (outcome: string) => (outcome === 'not settled' ? 'is not settled' : outcome);
  const starved = feeds === 'not settled' ? ['may not feed this load at all'] : [];
  const why = feeds === 'not settled' ? ': at the far end of its doubt too little comes through' : '';
  const short =
    drop === heat
      ? [`${verb(drop)} on volts and heat`]
      : [
          ...(drop === 'meets' ? [] : [`${verb(drop)} on volts`]),
          ...(heat === 'meets' || heat === null ? [] : [`${verb(heat)} on heat`]),
        ];
  return `One run ${andList([...short, ...starved])}${why}`;
}

/** `Brackenfell does with 6 side by side`: those that need the fewest runs; empty where one run does or none do. */
function sideBySide(
  answers: readonly RunAnswer[],
  some: (least: readonly RunAnswer[]) => readonly RunAnswer[],
): string {
  const needed = answers.flatMap((a) => (a.parallel === null ? [] : [a.parallel]));
  if (needed.length === 0) return '';
  const fewest = Math.min(...needed);
  const named = some(answers.filter((a) => a.parallel === fewest)).map((a) => a.cable.name);
  return `${andList(named)} ${named.length === 1 ? 'does' : 'do'} with ${fewest} side by side`;
}

const lower = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
const then = (text: string): string => (text === '' ? '' : `; ${text}`);

/** A measured cable that cannot be looked at, and what is missing, such as `its outer diameter was not measured`. */
export interface LeftOut {
  name: string;
  text: string;
}

/** More names than this make no sentence. */
const MOST_NAMES = 4;

/** `No measured cable can be looked at: of Brackenfell and Quill the outer diameter was not measured.` */
function noneText(missing: readonly LeftOut[]): string {
  const whys = [...new Set(missing.map((m) => m.text))].map((text) => {
    const names = missing.filter((m) => m.text === text).map((m) => m.name);
    return `of ${names.length > MOST_NAMES ? `${names.length} of them` : andList(names)} ${text.replace(/^its /, 'the ')}`;
  });
  return whys.length === 0 ? '' : `No measured cable can be looked at: ${whys.join('; ')}.`;
}

/**
 * The whole check in one or two sentences: what does, and where nothing does by itself how many side by side do.
 *
 * @param missing measured cables that are not in the check; said first where none is in it.
 */
export function runSentence(q: RunQuestion, check: RunCheck, missing: readonly LeftOut[] = []): string {
  if (check.problems.length > 0) return check.problems.join(' ');
  const measured = check.answers.filter((a) => a.cable.measured);
  const hot = measured.filter((a) => a.tooHot);
  if (hot.length > 0 && hot.length === measured.length) {
    const ratings = hot.map((a) => a.cable.rating - ZERO_CELSIUS);
    const [least, most] = [Math.min(...ratings), Math.max(...ratings)].map((c) => c.toFixed(0));
    const rated = least === most ? `${least} °C` : `${least} to ${most} °C`;
    return `The surroundings, ${(q.surroundings.ambient - ZERO_CELSIUS).toFixed(0)} °C, are as hot as the measured cables’ jackets bear (${rated}), or hotter: nothing may flow in them there.`;
  }
  const named = check.meets.map((id) => measured.find((a) => a.cable.id === id)!.cable.name);
  const first =
    measured.length === 0
      ? noneText(missing)
      : named.length > 0
        ? `Of the measured cables ${andList(named)} ${named.length === 1 ? 'meets' : 'meet'} volts and heat with one run.`
        : `None of the measured cables surely meets volts and heat with one run${then(sideBySide(measured, (all) => all))}.`;
  const nominal = check.answers.filter((a) => !a.cable.measured);
  const thinnest = (all: readonly RunAnswer[]) => [...all].sort((a, b) => a.cable.area - b.cable.area).slice(0, 1);
  const size = check.leastSize
    ? `The least nominal copper size that does is ${check.leastSize}.`
    : `No nominal copper size in the list does with one run${then(sideBySide(nominal, thinnest))}.`;
  const unknown =
    q.back.kind === 'body unknown' &&
    check.meets.length === 0 &&
    check.answers.some((a) => a.outcomes.drop === 'not settled')
      ? 'The unknown ohms of the body keep it open: measure them, plus side and minus side under load.'
      : '';
  return [first, nominal.length > 0 ? size : '', unknown].filter((s) => s !== '').join(' ');
}
