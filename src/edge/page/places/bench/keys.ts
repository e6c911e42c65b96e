/** The keyboard at the bench: a scale or caliper that types, a foot pedal that is Enter, and one key for every act. */
import { closeDialog, show } from '../../store/bench/dialogs.ts';
import { clearField, eraseLast, typed, typeInto } from '../../store/bench/field.ts';
import { later, step } from '../../store/bench/inHand.ts';
import { takeNextLook } from '../../store/bench/looks.ts';
import { undo } from '../../store/bench/putRight.ts';
import { asked, keepIt } from '../../store/bench/questions.ts';
import { record } from '../../store/bench/record.ts';

/** The id of the big field. */
export const FIELD = 'bench-value';
/** The id of the field for the temperature. */
export const WARMTH = 'bench-room';

/** One key for each act, in the order in which they are listed. They work while the field is empty. */
export const LETTERS: Readonly<Record<string, { words: string; act: () => void }>> = {
  s: { words: 'strike out', act: () => show('strike') },
  n: { words: 'note', act: () => show('note') },
  p: { words: 'photo', act: () => show('photo') },
  l: { words: 'later', act: later },
  u: { words: 'undo', act: () => void undo() },
  t: { words: 'temperature', act: () => toField(WARMTH) },
  e: { words: 'look, by eye or magnet', act: takeNextLook },
  g: { words: 'go to', act: () => show('choose') },
  '?': { words: 'all keys', act: () => show('keys') },
};

const PART_OF_A_NUMBER = /^[0-9.,/+\-\u2212]$/;

/** Hears every key that is pressed on the page. */
export function benchKeys(event: KeyboardEvent): void {
  if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing) return;
  if (document.querySelector('dialog[open]') !== null) return;
  const at = event.target instanceof HTMLElement ? event.target : document.body;
  const handled = at.id === FIELD ? inField(event) : isTyping(at) ? inOther(event) : elsewhere(event, at);
  if (handled) event.preventDefault();
}

/** Back to the big field. */
export function toValueField(): void {
  field()?.focus();
}

/** Goes to a field with what is in it marked, so that typing replaces it. */
function toField(id: string): void {
  const at = document.getElementById(id);
  if (at instanceof HTMLInputElement) {
    const fold = at.closest('details');
    if (fold !== null) fold.open = true;
    at.focus();
    at.select();
  }
}

const field = () => document.getElementById(FIELD) as HTMLInputElement | null;

/** Text that belongs to another control. */
const isTyping = (at: HTMLElement) =>
  at.matches('textarea, select, [contenteditable]') ||
  (at instanceof HTMLInputElement && !['radio', 'checkbox', 'button', 'file'].includes(at.type));

function inOther(event: KeyboardEvent): boolean {
  const back =
    event.key === 'Escape' ||
    (event.key === 'Enter' && event.target === document.activeElement && isCarried(event.target));
  if (back) field()?.focus();
  return back;
}

/** A field whose content goes along with every reading: Enter is done with it. */
const isCarried = (at: EventTarget | null) => at instanceof HTMLInputElement && at.closest('.carried') !== null;

function inField(event: KeyboardEvent): boolean {
  if (event.key === 'Enter') return enter(event);
  if (event.key === 'Escape') return leave();
  return move(event) || letter(event);
}

function elsewhere(event: KeyboardEvent, at: HTMLElement): boolean {
  const { key } = event;
  if (PART_OF_A_NUMBER.test(key) || (key === ' ' && at === document.body && typed.value !== '')) {
    typeInto(key);
    field()?.focus();
    return true;
  }
  if (key === 'Backspace') {
    eraseLast();
    field()?.focus();
    return true;
  }
  if (key === 'Escape') return leave();
  const acts = at.matches('a, button, summary, input');
  if (key === 'Enter') return acts ? false : enter(event);
  if (at.matches('input[type=radio]')) return false;
  return move(event) || letter(event);
}

function enter(event: KeyboardEvent): boolean {
  // A pedal that is held down says Enter again and again.
  if (!event.repeat) void record();
  return true;
}

function leave(): boolean {
  if (typed.value === '' && asked.value !== null) keepIt(asked.value);
  clearField();
  closeDialog();
  field()?.focus();
  return true;
}

function move({ key }: KeyboardEvent): boolean {
  const sideways = typed.value === '';
  if (key === 'ArrowDown' || (sideways && key === 'ArrowRight')) step(1);
  else if (key === 'ArrowUp' || (sideways && key === 'ArrowLeft')) step(-1);
  else return false;
  return true;
}

function letter({ key }: KeyboardEvent): boolean {
  const act = typed.value === '' && Object.hasOwn(LETTERS, key.toLowerCase()) ? LETTERS[key.toLowerCase()] : undefined;
  act?.act();
  return act !== undefined;
}
