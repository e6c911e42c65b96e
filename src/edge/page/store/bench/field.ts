/** What is in the big field. It belongs to the quantity and the piece in hand, and to no other. */
import { batch, effect, signal, untracked } from '@preact/signals';
import { inHand, takeUp } from './inHand.ts';

/** The text in the field, exactly as typed. */
export const typed = signal('');
/** What is wrong, in a sentence; empty while nothing is. */
export const trouble = signal('');
/** How often in a row what stands in the field was refused; 0 while it was not. It stands there whole, for the next typing to replace. */
export const refused = signal(0);
/** How the contacts stand or which face is up, as far as it matters. */
export const position = signal('');

/** Puts into the field what a keyboard made of it. */
export function write(text: string): void {
  holdOn();
  fill(text);
}

function fill(text: string): void {
  batch(() => {
    typed.value = text;
    trouble.value = '';
    refused.value = 0;
  });
}

/** Adds to the field, as a key does; takes the place of what was refused. */
export function typeInto(text: string): void {
  write(kept() + text);
}

/** What the next key adds to: nothing where the text was refused. */
const kept = () => (refused.value > 0 ? '' : typed.value);

/** Says what is wrong. What was typed stays in sight, whole and marked, so that it can be read and typed anew. */
export function refuse(sentence: string): void {
  trouble.value = sentence;
  refused.value += 1;
}

/**
 * The fraction key, for `3/8` and `1 3/8` without a slash among the keys: after a whole number it sets a space, then, pressed
 * again, a stroke instead; after a space and a number, the stroke.
 */
export function fractionKey(): void {
  const text = kept();
  if (/^\d+$/.test(text)) write(`${text} `);
  else if (/^\d+ \d+$/.test(text)) write(`${text}/`);
  else if (/^\d+[ /]$/.test(text)) write(text.slice(0, -1) + (text.endsWith(' ') ? '/' : ' '));
}

export function eraseLast(): void {
  write(kept().slice(0, -1));
}

export function clearField(): void {
  fill('');
}

/** Whoever begins to type means what is in hand now, whatever comes in meanwhile from another device. */
function holdOn(): void {
  const now = inHand.peek();
  if (now !== null && typed.peek() === '') takeUp({ specimen: now.item.specimen, quantity: now.item.quantity });
}

let belongsTo = '';

/** What was typed for one piece or quantity is never left for another. */
effect(() => {
  const { specimen = '', quantity = '' } = inHand.value?.item ?? {};
  const now = `${specimen}\u001f${quantity}`;
  if (now === belongsTo) return;
  belongsTo = now;
  untracked(clearField);
});
