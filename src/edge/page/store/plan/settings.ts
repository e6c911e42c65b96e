/** Settings of the plan as people type them, and as they are kept: shares for per cent, millimetres for lengths. */
import { readTypedNumber } from '../../../../units/typedNumber.ts';
import { readTypedQuantity } from '../../../../units/typedQuantity.ts';
import type { Trouble } from '../fieldTroubles.ts';
import { correctRow, type Troubles } from './correct.ts';

export type SettingKind = 'percent' | 'count' | 'some' | 'millimetres' | 'length' | 'money' | 'words';

type Kept = { ok: true; value: string } | { ok: false; trouble: Trouble };

const MOST = 100;
const trouble = (found: string, expected: string, advice = ''): Kept => ({
  ok: false,
  trouble: { found, expected, advice },
});

/** Digits of a length in mm and of a share: enough for what a saw or a rule can do. */
const DIGITS = 6;

/** What was typed, as it is kept; blank takes the setting back. */
export function keptSetting(kind: SettingKind, typed: string): Kept {
  const plain = typed.trim();
  if (plain === '' || kind === 'words') return { ok: true, value: plain };
  if (kind === 'percent') return percent(plain);
  if (kind === 'millimetres' || kind === 'length') {
    const read = readTypedQuantity(plain, 'length', kind === 'length' ? undefined : 'mm');
    if (!read.ok) return trouble(read.found, read.expected, read.advice);
    if (read.value.value < 0) return trouble(`"${plain}"`, 'a length that is not negative');
    return {
      ok: true,
      value: kind === 'length' ? plain : String(Number((read.value.value * 1000).toPrecision(DIGITS))),
    };
  }
  const read = readTypedNumber(plain);
  const value = read.ok ? read.value.value : Number.NaN;
  if (kind === 'money') return value > 0 ? { ok: true, value: plain } : trouble(`"${plain}"`, 'a price above zero');
  const least = kind === 'count' ? 1 : 0;
  if (Number.isInteger(value) && value >= least && value <= MOST) return { ok: true, value: String(value) };
  return trouble(`"${plain}"`, `a whole number from ${least} to ${MOST}`);
}

/** `5`, `5 %` and `0.05` all mean five per cent: nobody asks for a shortfall of less than one. */
function percent(plain: string): Kept {
  const read = readTypedNumber(plain.replace(/\s*%$/, ''));
  if (!read.ok) return trouble(read.found, 'a shortfall, such as 5 %');
  const { value } = read.value;
  const share = /%$/.test(plain) || value >= 1 ? value / 100 : value;
  if (!(share >= 0.001 && share <= 0.9)) return trouble(`"${plain}"`, 'a shortfall from 0.1 % to 90 %');
  return { ok: true, value: String(Number(share.toPrecision(DIGITS))) };
}

/** A kept setting as it is shown in its field. */
export function shownSetting(kind: SettingKind, kept: string): string {
  if (kept === '') return '';
  if (kind === 'percent') return `${Number((100 * Number(kept)).toPrecision(DIGITS))} %`;
  return kind === 'millimetres' ? `${kept} mm` : kept;
}

/** Says a setting, or how it follows from what it is now; a blank value takes it back to its default. */
export function saySetting(name: string, value: string | ((now: string) => string)): Promise<Troubles | null> {
  return correctRow('setting', { setting: name }, (now) => ({
    value: typeof value === 'function' ? value(now.value ?? '') : value,
  }));
}
