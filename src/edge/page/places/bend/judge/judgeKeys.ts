import { type Answer, judge, undoJudgement } from '../../../store/bend/judging.ts';

/** Arrows answer by the hand that holds it; down or the space bar says that both bend alike. */
const ANSWERS: Readonly<Record<string, Answer>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowDown: 'same',
  ' ': 'same',
};

/** Hears every key while pairs are judged, except where text is typed or something is chosen. */
export function judgeKeys(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing || event.repeat) return;
  const at = event.target instanceof HTMLElement ? event.target : document.body;
  if (at.matches('input, select, textarea, [contenteditable]')) return;
  if (event.key === ' ' && at.matches('button, a, summary')) return;
  const answer = Object.hasOwn(ANSWERS, event.key) ? ANSWERS[event.key] : undefined;
  if (answer !== undefined) void judge(answer);
  else if (event.key.toLowerCase() === 'u') void undoJudgement();
  else return;
  event.preventDefault();
}
