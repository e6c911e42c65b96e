import type { ValueFunction } from '../../methods/decide/standing/valueFunction.ts';
import { readTypedNumber } from '../../units/typedNumber.ts';
import { nameAndRest, nameTyped, piecesOf } from './namesTyped.ts';

/** What the plan says of the standing; rows of plan.csv whose names begin with `standing_`. */
export interface StandingSettings {
  /** Whether anything was said at all. */
  stated: boolean;
  job: string | null;
  numbers: ReadonlyMap<string, number> | null;
  /** Groups of equal importance, the most important first. */
  ranking: string[][] | null;
  scales: ReadonlyMap<string, ValueFunction>;
  /** What could not be read, as sentences. */
  troubles: string[];
}

type Typed = Readonly<Record<string, string>>;

const SCALE = 'standing_scale_';

const numberOf = (text: string): number => {
  const read = readTypedNumber(text.trim());
  return read.ok ? read.value.value : Number.NaN;
};

/**
 * `copper 40, "endurance:hot iron, dry" 20`: a name and a number each, names with a comma in quotation marks; null when a part cannot
 * be read or nothing weighs anything.
 */
export function readWeights(text: string): Map<string, number> | null {
  const weights = new Map<string, number>();
  for (const piece of piecesOf(text, ',;\n')) {
    const part = piece.replace(/%\s*$/, '').trim();
    if (part === '') continue;
    const read = nameAndRest(part);
    if (read === null) return null;
    const cut = part.lastIndexOf(' ');
    const name = read.marked ? read.name : part.slice(0, Math.max(0, cut)).trim().toLowerCase();
    const weight = numberOf(read.marked ? read.rest : part.slice(cut + 1));
    if (name === '' || !(weight >= 0)) return null;
    weights.set(name, weight);
  }
  return [...weights.values()].some((w) => w > 0) ? weights : null;
}

/** Weights as they are written in plan.csv: what `readWeights` reads back. */
export const weightsText = (weights: ReadonlyMap<string, number>): string =>
  [...weights]
    .filter(([, weight]) => weight > 0)
    .map(([id, weight]) => `${nameTyped(id)} ${weight}`)
    .join(', ');

/** `copper, judged = wall, price`: the most important first, `=` between equals; null when empty. */
export function readRanking(text: string): string[][] | null {
  const groups = piecesOf(text, ',;>\n').map((group) =>
    piecesOf(group, '=')
      .map(nameAndRest)
      .filter((read) => read === null || read.marked || read.name !== ''),
  );
  const all = groups.flat();
  if (all.some((read) => read === null || read.rest !== '')) return null;
  const names = groups.map((group) => group.map((read) => read!.name)).filter((group) => group.length > 0);
  return names.length > 0 && new Set(names.flat()).size === all.length ? names : null;
}

/** An order of importance as it is written in plan.csv: what `readRanking` reads back. */
export const rankingText = (ranking: readonly (readonly string[])[]): string =>
  ranking.map((group) => group.map(nameTyped).join(' = ')).join(', ');

/**
 * `0.7 to 1 flat`, `40 to 4`, `threshold 12`: the worst end, then the best, in the criterion's unit. A threshold whose figure is to
 * be at most that is written `threshold at most 12`.
 */
export function readScale(text: string): ValueFunction | null {
  const said = text.trim().toLowerCase();
  const threshold = /^threshold\s+(at most\s+|at least\s+)?(\S+)$/.exec(said);
  if (threshold) {
    const best = numberOf(threshold[2]);
    if (!Number.isFinite(best)) return null;
    const step = Math.abs(best) || 1;
    return { shape: 'threshold', best, worst: threshold[1]?.startsWith('at most') ? best + step : best - step };
  }
  const ends = /^(\S+)\s+to\s+(\S+?)(?:\s+(flat|linear))?$/.exec(said);
  if (!ends) return null;
  const [worst, best] = [numberOf(ends[1]), numberOf(ends[2])];
  if (!Number.isFinite(worst) || !Number.isFinite(best) || worst === best) return null;
  return { shape: ends[3] === 'flat' ? 'flat' : 'linear', worst, best };
}

/** A scale as it is written in plan.csv: what `readScale` reads back. */
export function scaleText({ shape, worst, best }: ValueFunction): string {
  if (shape === 'threshold') return `threshold ${best < worst ? 'at most ' : 'at least '}${best}`;
  return `${worst} to ${best}${shape === 'flat' ? ' flat' : ''}`;
}

export function standingSettings(typed: Typed): StandingSettings {
  const troubles: string[] = [];
  const read = <T>(name: string, reader: (text: string) => T | null, expected: string): T | null => {
    const text = (typed[name] ?? '').trim();
    if (text === '') return null;
    const value = reader(text);
    if (value === null) troubles.push(`plan.csv: ${name} is "${text}"; expected ${expected}. It is passed over.`);
    return value;
  };
  const scales = new Map<string, ValueFunction>();
  for (const name of Object.keys(typed).filter((n) => n.startsWith(SCALE))) {
    const scale = read(
      name,
      readScale,
      'two ends such as "0.7 to 1 flat", the worst first, or "threshold at least 0.98"',
    );
    if (scale) scales.set(name.slice(SCALE.length).toLowerCase(), scale);
  }
  return {
    stated: Object.keys(typed).some((name) => name.startsWith('standing_') && typed[name].trim() !== ''),
    job: (typed.standing_job ?? '').trim() || null,
    numbers: read('standing_weights', readWeights, 'names and numbers such as "copper 40, price 30"'),
    ranking: read('standing_ranking', readRanking, 'names, the most important first, each once'),
    scales,
    troubles,
  };
}
