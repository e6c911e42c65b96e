import { count, keepOutcome, run, startOrStop, takeBackCount } from '../../../store/jacket/running.ts';

/** Hears every key while a test is run, except where text is typed or something is chosen. A held key counts once. */
export function runKeys(event: KeyboardEvent): void {
  const now = run.peek();
  if (now === null || !now.begun || event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
  const at = event.target instanceof HTMLElement ? event.target : document.body;
  if (at.matches('input, select, textarea, [contenteditable]')) return;
  const press = event.key === 'Enter' || event.key === ' ';
  if (event.repeat) {
    if (press) event.preventDefault();
    return;
  }
  // A button, a link or a fold in focus does what is written on it.
  if (press && at.matches('button, a, summary')) return;
  const act = press ? (now.way === 'strokes' ? () => count(1) : startOrStop) : LETTERS[event.key.toLowerCase()];
  if (act === undefined) return;
  event.preventDefault();
  act();
}

const LETTERS: Readonly<Record<string, () => void>> = {
  t: () => count(10),
  u: takeBackCount,
  backspace: takeBackCount,
  f: () => void keepOutcome('failed'),
  s: () => void keepOutcome('survived'),
};
