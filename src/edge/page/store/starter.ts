/** A first trial from a few answers: what is typed, what is wrong with it, and the act that makes it. */
import { computed, signal } from '@preact/signals';
import { ownedTool } from '../../../findings/starter/ownedTools.ts';
import type { StarterAnswers } from '../../../findings/starter.ts';
import { readLimitText } from '../../../journal/limitText.ts';
import type { Dimension } from '../../../units/dimension.ts';
import { numberWordFirst } from '../../../units/numberWords.ts';
import { readSizeText } from '../../../units/sizeText.ts';
import { readTypedNumber } from '../../../units/typedNumber.ts';
import { readTypedQuantity } from '../../../units/typedQuantity.ts';
import { findUnit } from '../../../units/unit.ts';
import { Bench } from '../worker/bench.ts';
import { sendTogether } from './api.ts';
import type { Trouble } from './fieldTroubles.ts';
import { deviceName, recorder } from './journal/device.ts';
import { goTo } from './route.ts';
import { sentenceOf } from './sentenceOf.ts';
import { loadShelf } from './shelf.ts';

/** What is asked, as typed. */
export interface StarterFields {
  title: string;
  cables: string;
  size: string;
  metal: string;
  bought: string;
  temperature: string;
  /** Size of a control piece; blank: none. */
  control: string;
}

const BLANK: StarterFields = {
  title: '',
  cables: '6',
  size: '',
  metal: '',
  bought: '',
  temperature: '20 C',
  control: '',
};
/** What nearly everybody has at hand. */
const USUAL_TOOLS = ['pocket scale', 'steel rule', 'digital caliper', 'four-wire meter', 'thermometer'];

export const answers = signal<StarterFields>(BLANK);
export const owned = signal<ReadonlySet<string>>(new Set(USUAL_TOOLS));
/** Limits of error that differ from the usual ones, as the boxes print them, by tool. */
export const limits = signal<Readonly<Record<string, string>>>({});
/** Why the trial could not be made; empty when nothing stood in the way. */
export const startTrouble = signal('');
export const starting = signal(false);

export function typeAnswer(name: keyof StarterFields, text: string): void {
  answers.value = { ...answers.value, [name]: text };
  startTrouble.value = '';
}

export function own(tool: string, has: boolean): void {
  const next = new Set(owned.value);
  if (has) next.add(tool);
  else next.delete(tool);
  owned.value = next;
}

export function typeLimit(tool: string, text: string): void {
  limits.value = { ...limits.value, [tool]: text };
}

const bench = new Bench();

/** More cables than this in a first trial are a slip of the keyboard. */
const MOST = 100;

/** What to say under each answer that cannot be taken; blank ones are said only when they are needed. */
export const starterTroubles = computed<Partial<Record<keyof StarterFields, Trouble>>>(() => {
  const typed = answers.value;
  const found: Partial<Record<keyof StarterFields, Trouble>> = {};
  const count = readTypedNumber(typed.cables);
  if (!count.ok || !Number.isInteger(count.value.value) || count.value.value < 1 || count.value.value > MOST)
    found.cables = { found: shown(typed.cables), expected: `a whole number from 1 to ${MOST}`, advice: '' };
  const size = typed.size.trim() === '' ? null : readSizeText(typed.size);
  if (size !== null && !size.ok) found.size = troubleOf(size);
  const control = typed.control.trim() === '' ? null : readSizeText(typed.control);
  if (control !== null && !control.ok) found.control = troubleOf(control);
  const measured = (name: 'bought' | 'temperature', dimension: Dimension, unit: string) => {
    const read = typed[name].trim() === '' ? null : readTypedQuantity(typed[name], dimension, unit);
    if (read !== null && !read.ok) found[name] = troubleOf(read);
  };
  measured('bought', 'length', 'm');
  measured('temperature', 'temperature', 'C');
  return found;
});

/** What is wrong with the limit of a tool; null when it is blank or can be read. */
export function limitTrouble(tool: string): Trouble | null {
  const text = (limits.value[tool] ?? '').trim();
  const unit = findUnit(ownedTool(tool)?.unit ?? '');
  if (text === '' || unit === null) return null;
  const read = readLimitText(text, unit);
  return read.ok ? null : troubleOf(read);
}

const shown = (text: string) => (text.trim() === '' ? 'nothing' : `"${text.trim()}"`);
const troubleOf = ({
  found,
  expected,
  advice = '',
}: {
  found: string;
  expected: string;
  advice?: string;
}): Trouble => ({
  found,
  expected,
  advice,
});

/** Makes the trial in one go and opens its plan. */
export async function startTrial(): Promise<void> {
  const sentence = whatStandsInTheWay();
  startTrouble.value = sentence;
  if (sentence !== '' || starting.value) return;
  starting.value = true;
  const trial = trialName(titleOf(answers.value));
  const sent = await made(trial).finally(() => {
    starting.value = false;
  });
  if (!sent.ok) {
    startTrouble.value = sent.sentence;
    return;
  }
  answers.value = BLANK;
  limits.value = {};
  void loadShelf();
  goTo({ place: 'plan', trial, sheet: null });
}

function whatStandsInTheWay(): string {
  if (answers.value.size.trim() === '')
    return 'Type the size that the labels say, such as 2 AWG: everything follows from it.';
  const wrong = Object.keys(starterTroubles.value).length + [...owned.value].filter(limitTrouble).length;
  return wrong === 0 ? '' : 'One of the answers cannot be read: see under its field.';
}

/** Has the entries made, and sends them in one go. */
async function made(trial: string) {
  const asked = {
    answers: starterAnswers(),
    trial,
    at: new Date().toISOString(),
    by: recorder.value,
    device: deviceName(),
  };
  try {
    return await sendTogether(trial, await bench.ask('start', asked));
  } catch (error) {
    return { ok: false as const, sentence: sentenceOf(error) };
  }
}

function starterAnswers(): StarterAnswers {
  const { title, cables, size, metal, bought, temperature, control } = answers.value;
  const count = readTypedNumber(cables);
  return {
    title: title.trim() || titleOf(answers.value),
    cables: count.ok ? count.value.value : 1,
    size: size.trim(),
    metal: metal.trim(),
    boughtLength: bought.trim(),
    tools: [...owned.value],
    limits: limits.value,
    control: control.trim() === '' ? null : { size: control.trim() },
    temperature: temperature.trim(),
  };
}

/** `Six 2 AWG cables`: what a trial is called until somebody calls it otherwise. */
export function titleOf({ title, cables, size }: StarterFields): string {
  if (title.trim() !== '') return title.trim();
  const count = readTypedNumber(cables);
  const many = count.ok && Number.isInteger(count.value.value) && count.value.value > 0 ? count.value.value : 1;
  return `${numberWordFirst(many)} ${size.trim()} ${many === 1 ? 'cable' : 'cables'}`.replace(/\s+/g, ' ');
}

const LONGEST = 40;

/** A name for addresses and files out of a title, with a few letters by chance so that no two trials share it. */
function trialName(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, LONGEST);
  const chance = crypto.getRandomValues(new Uint32Array(1))[0]!.toString(36).slice(-4).padStart(4, '0');
  return `${plain || 'trial'}-${chance}`;
}
