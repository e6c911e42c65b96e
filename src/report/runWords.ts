import type { RunAnswer } from '../methods/current/runCheck/answer.ts';
import type { Between, RunQuestion } from '../methods/current/runCheck/question.ts';
import type { RunCheck } from '../methods/current/runCheck/runCheck.ts';
import { ZERO_CELSIUS } from '../units/dimension.ts';
import { andList } from './words/andList.ts';

const KINDS = {
  'same cable': 'back by the same cable',
  'other cable': 'back by another cable',
  'body measured': 'back by the body, as measured',
  'body unknown': 'back by the body, its ohms unknown',
} as const;

/** `600 W steady, 1500 W at its peak, 5.0 m, back by the same cable, from 12.6 V` */
export function questionText(q: RunQuestion): string {
  const unit = q.load.kind === 'watts' ? 'W' : 'A';
  const peak = q.load.peak ? `, ${plain(q.load.peak.amount)} ${unit} at its peak` : '';
  const charging = q.supply.charging === null ? '' : `, ${plain(q.supply.charging)} V charging`;
  return `${plain(q.load.steady)} ${unit} steady${peak}, ${q.length.toFixed(1)} m out, ${KINDS[q.back.kind]}, from ${plain(q.supply.resting)} V at rest${charging}, in ${(q.surroundings.ambient - ZERO_CELSIUS).toFixed(0)} °C; ${(100 * q.allowedDrop).toFixed(1)} % may be lost.`;
}

const plain = (x: number): string => String(Number(x.toPrecision(4)));

/** Middle and ends: `11.2 (10.9 to 11.5)`; the middle alone where the ends say the same; a dash where there is no figure. */
export function betweenText({ value, low, high }: Between, decimals: number): string {
  if (Number.isNaN(value)) return '—';
  const [v, a, b] = [value, low, high].map((x) => x.toFixed(decimals));
  return a === b ? v! : `${v} (${Number.isNaN(low) ? '—' : a} to ${Number.isNaN(high) ? '—' : b})`;
}

/** What one cable does, in one sentence. */
export function answerText({ cable, outcomes, parallel, resting }: RunAnswer): string {
  if (resting.fails === 'not enough volts')
    return `${cable.name}: at one end of its doubt the load asks for more than can come through.`;
  if (outcomes.all === 'meets') return `${cable.name} meets both.`;
  const both = outcomes.drop === outcomes.heat;
  const drop = `${outcomes.drop} on volts`;
  const heat = `${outcomes.heat} on heat`;
  const first = `${cable.name}: ${both ? `${outcomes.all} on volts and heat` : `${drop}, ${heat}`}`;
  return parallel === null
    ? `${first}; no number of runs up to six meets both.`
    : `${first}; ${parallel} runs side by side meet both.`;
}

/** The whole check in one or two sentences. */
export function runSentence(q: RunQuestion, check: RunCheck): string {
  if (check.problems.length > 0) return check.problems.join(' ');
  const measured = check.answers.filter((a) => a.cable.measured);
  const named = check.meets.map((id) => measured.find((a) => a.cable.id === id)!.cable.name);
  const first =
    measured.length === 0
      ? ''
      : named.length > 0
        ? `Of the measured cables ${andList(named)} ${named.length === 1 ? 'meets' : 'meet'} volts and heat with one run.`
        : 'None of the measured cables surely meets volts and heat with one run.';
  const nominal = check.answers.some((a) => !a.cable.measured);
  const size = check.leastSize
    ? `The least nominal copper size that does is ${check.leastSize}.`
    : 'No nominal size in the list does with one run.';
  const unknown =
    q.back.kind === 'body unknown' &&
    check.meets.length === 0 &&
    check.answers.some((a) => a.outcomes.drop === 'not settled')
      ? 'The unknown ohms of the body keep it open: measure them, plus side and minus side under load.'
      : '';
  return [first, nominal ? size : '', unknown].filter((s) => s !== '').join(' ');
}
