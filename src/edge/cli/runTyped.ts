/** Readers of what `cupel run` was given: each takes the text of one option into SI, or ends with what was found and expected. */
import { USUAL_LAYER_CONDUCTIVITY } from '../../methods/current/materials.ts';
import {
  MOST_AMPS,
  type RunLoad,
  type RunQuestion,
  type RunReturn,
  UNKNOWN_BODY,
  USUAL_RUN,
} from '../../methods/current/runCheck/question.ts';
import type { Dimension } from '../../units/dimension.ts';
import { readTypedQuantity } from '../../units/typedQuantity.ts';
import { EXIT, Failure } from './failure.ts';

/** @param found as typed in quotes, or in the words of the reader. */
export const wrong = (option: string, found: string, expected: string): Failure =>
  new Failure(`--${option} was ${found}; expected ${expected}.`, EXIT.wrongUse);
const quoted = (text: string): string => `"${text}"`;

/** @param unit taken where none is typed. Negative ones are left to the check, which names them. */
export function quantityOf(option: string, text: string, dimension: Dimension, unit: string, expected: string): number {
  const read = readTypedQuantity(text, dimension, unit);
  if (!read.ok) throw wrong(option, read.found, expected);
  return read.value.value;
}

/** `0.8` or `80%` */
export function shareOf(option: string, text: string | undefined, usual: number): number {
  if (text === undefined) return usual;
  const expected = 'a share from 0 to 1, or in per cent, such as 0.8 or 80%';
  const share = quantityOf(option, text, 'ratio', '', expected);
  if (share > 1) throw wrong(option, quoted(text), expected);
  return share;
}

/** `80A`, `1.2kW`, `600 W` */
export function loadOf(option: string, text: string): { kind: RunLoad['kind']; amount: number } {
  const watts = readTypedQuantity(text, 'power');
  if (watts.ok) return { kind: 'watts', amount: watts.value.value };
  const amps = readTypedQuantity(text, 'current');
  if (!amps.ok) throw wrong(option, amps.found, 'amps or watts, such as 80A or 600W');
  return { kind: 'amps', amount: amps.value.value };
}

/** A, as `--overload` has it: `250A` or `250`. */
export function overloadOf(text: string): number {
  const expected = `amps above 0 and up to ${MOST_AMPS}, such as 250A`;
  const amps = quantityOf('overload', text, 'current', 'A', expected);
  if (!(amps > 0 && amps <= MOST_AMPS)) throw wrong('overload', quoted(text), expected);
  return amps;
}

/** `12.6`, `12.6V`; `230 VAC` says that it is not direct. */
export function voltsOf(option: string, text: string): { volts: number; direct: boolean } {
  const [, before, kind] = /^(.*?)\s*(dc|ac|~|mains)?\s*$/i.exec(text)!;
  return {
    volts: quantityOf(option, before!, 'voltage', 'V', 'volts, such as 12.6'),
    direct: kind === undefined || /dc/i.test(kind),
  };
}

/** `5%` or `0.5V` of what the supply has. */
export function dropOf(text: string | undefined, volts: number): number {
  if (text === undefined) return USUAL_RUN.drop / volts;
  const expected = 'volts or per cent that may be lost, such as 0.5V or 4%';
  if (text.includes('%')) return quantityOf('drop', text, 'ratio', '%', expected);
  return quantityOf('drop', text, 'voltage', 'V', expected) / volts;
}

/** `2-8`, `0.5 to 3mohm`, `1.2mohm`: ohms between two ends, which may be one. */
export function ohmsBetween(option: string, text: string, expected: string): { low: number; high: number } {
  const [, least, most, unit = ''] = /^\s*([\d.,]+)\s*(?:-|–|to|\.\.)\s*([\d.,]+)\s*(\D*)$/.exec(text) ?? [];
  const ohms = (one: string) => quantityOf(option, one, 'resistance', 'mohm', expected);
  if (least === undefined) return { low: ohms(text), high: ohms(text) };
  return { low: ohms(`${least}${unit}`), high: ohms(`${most}${unit}`) };
}

export function returnOf(text: string, length: number): RunReturn {
  const word = text.trim().toLowerCase();
  if (word === 'same') return { kind: 'same cable', length };
  if (word === 'body') return { kind: 'body unknown', ...UNKNOWN_BODY };
  const expected = 'same, body, measured ohms such as 1.2mohm, or a range such as 0.5-3mohm';
  const { low, high } = ohmsBetween('return', text, expected);
  return low === high ? { kind: 'body measured', ohms: low } : { kind: 'body unknown', low, high };
}

/** `0.18,0.09@120`: volts lost on the plus and the minus side at so many amps. */
export function measuredOf(text: string, installed: string | undefined): RunQuestion['measured'] {
  const match = /^\s*([\d.]+)\s*v?\s*,\s*([\d.]+)\s*v?\s*@\s*([\d.]+)\s*a?\s*$/i.exec(text);
  if (!match) throw wrong('measured', quoted(text), 'volts lost on plus and minus at a current, such as 0.18,0.09@120');
  return { plus: Number(match[1]), minus: Number(match[2]), current: Number(match[3]), cable: installed ?? null };
}

export function layerOf(text: string): RunQuestion['surroundings']['layer'] {
  const expected = 'a thickness, such as 8mm, or one with W/(m K), such as 8mm,0.05';
  const [thick = '', conductivity] = text.split(',');
  return {
    thickness: quantityOf('layer', thick, 'length', 'mm', expected),
    conductivity:
      conductivity === undefined ? USUAL_LAYER_CONDUCTIVITY : quantityOf('layer', conductivity, 'ratio', '', expected),
  };
}
