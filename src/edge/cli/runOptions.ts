import type { RunLoad, RunQuestion, RunReturn } from '../../methods/current/runCheck/question.ts';
import { UNKNOWN_BODY, USUAL_RUN, usualCharging, usualJointOhms } from '../../methods/current/runCheck/question.ts';
import { usualTaken } from '../../report/runTaken.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import { readTypedQuantity } from '../../units/typedQuantity.ts';
import { EXIT, Failure } from './failure.ts';

/** What `cupel run` was given, as typed. */
export interface RunOptions {
  cable: string[];
  load: string;
  length: string;
  peak?: string;
  peakShare?: string;
  peakSeconds?: string;
  efficiency?: string;
  supply: string;
  charging?: string;
  supplyOhms: string;
  return: string;
  joints?: string;
  ambient?: string;
  bundle: string;
  layer?: string;
  drop?: string;
  measured?: string;
  installed?: string;
  sizes: string;
  profile?: string;
  json: boolean;
  ascii: boolean;
}

const wrong = (option: string, found: string, expected: string): Failure =>
  new Failure(`--${option} was "${found}"; expected ${expected}.`, EXIT.wrongUse);

function numberOf(option: string, text: string | undefined, expected: string, usual = Number.NaN): number {
  if (text === undefined) return usual;
  const value = text.trim() === '' ? Number.NaN : Number(text);
  if (!Number.isFinite(value)) throw wrong(option, text, expected);
  return value;
}

function quantityOf(
  option: string,
  text: string,
  dimension: 'length' | 'resistance',
  unit: string,
  expected: string,
): number {
  const negative = /^\s*-\s*\d/.test(text);
  const read = readTypedQuantity(negative ? text.replace('-', '') : text, dimension, unit);
  if (!read.ok) throw wrong(option, text, expected);
  return negative ? -read.value.value : read.value.value;
}

/** `80A`, `1.2kW`, `600 W` */
function loadOf(option: string, text: string): { kind: RunLoad['kind']; amount: number } {
  const match = /^\s*(-?[\d.]+(?:e-?\d+)?)\s*(kw|w|watts?|a|amps?)\s*$/i.exec(text);
  const amount = match ? Number(match[1]) : Number.NaN;
  if (!match || !Number.isFinite(amount)) throw wrong(option, text, 'amps or watts, such as 80A or 600W');
  const unit = match[2]!.toLowerCase();
  return { kind: unit.startsWith('a') ? 'amps' : 'watts', amount: unit === 'kw' ? 1000 * amount : amount };
}

/** `12.6`, `12.6V`; `230 VAC` says that it is not direct. */
function voltsOf(option: string, text: string): { volts: number; direct: boolean } {
  const match = /^\s*(-?[\d.]+)\s*(v)?\s*(dc|ac|~|mains)?\s*$/i.exec(text);
  const volts = match ? Number(match[1]) : Number.NaN;
  if (!match || !Number.isFinite(volts)) throw wrong(option, text, 'volts, such as 12.6');
  return { volts, direct: !/ac|~|mains/i.test(match[3] ?? '') };
}

/** `5%` or `0.5V` of what the supply has. */
function dropOf(text: string | undefined, volts: number): number {
  if (text === undefined) return USUAL_RUN.drop / volts;
  const percent = /^\s*([\d.]+)\s*%\s*$/.exec(text);
  if (percent) return Number(percent[1]) / 100;
  const lost = /^\s*([\d.]+)\s*v?\s*$/i.exec(text);
  if (lost) return Number(lost[1]) / volts;
  throw wrong('drop', text, 'volts or per cent that may be lost, such as 0.5V or 4%');
}

function returnOf(text: string, length: number): RunReturn {
  const word = text.trim().toLowerCase();
  if (word === 'same') return { kind: 'same cable', length };
  if (word === 'body') return { kind: 'body unknown', ...UNKNOWN_BODY };
  const range = /^([\d.]+)\s*(?:-|to|\.\.)\s*([\d.]+)\s*mohm$/.exec(word);
  if (range) return { kind: 'body unknown', low: Number(range[1]) / 1000, high: Number(range[2]) / 1000 };
  const read = readTypedQuantity(text, 'resistance', 'mohm');
  if (read.ok) return { kind: 'body measured', ohms: read.value.value };
  throw wrong('return', text, 'same, body, measured ohms such as 1.2mohm, or a range such as 0.5-3mohm');
}

/** `0.18,0.09@120`: volts lost on the plus and the minus side at so many amps. */
function measuredOf(text: string, installed: string | undefined): RunQuestion['measured'] {
  const match = /^\s*([\d.]+)\s*,\s*([\d.]+)\s*@\s*([\d.]+)\s*$/.exec(text);
  if (!match) throw wrong('measured', text, 'volts lost on plus and minus at a current, such as 0.18,0.09@120');
  return { plus: Number(match[1]), minus: Number(match[2]), current: Number(match[3]), cable: installed ?? null };
}

function layerOf(text: string): RunQuestion['surroundings']['layer'] {
  const expected = 'a thickness, such as 8mm, or one with W/(m K), such as 8mm,0.05';
  const [thick = '', conductivity] = text.split(',');
  const thickness = quantityOf('layer', thick, 'length', 'mm', expected);
  return {
    thickness,
    conductivity: conductivity === undefined ? 0.05 : numberOf('layer', conductivity, expected),
  };
}

/** The question that the options ask. What cannot be is left to the check, which names it; what cannot be read ends here. */
export function questionOf(o: RunOptions): RunQuestion {
  const resting = voltsOf('supply', o.supply);
  const charging =
    o.charging === undefined
      ? { volts: usualCharging(resting.volts), direct: true }
      : o.charging.trim().toLowerCase() === 'none'
        ? null
        : voltsOf('charging', o.charging);
  const load = loadOf('load', o.load);
  const peak = o.peak === undefined ? null : loadOf('peak', o.peak);
  if (peak && peak.kind !== load.kind) throw wrong('peak', o.peak!, `the same unit as --load ${o.load}`);
  const length = quantityOf('length', o.length, 'length', 'm', 'a length, such as 5m or 16ft');
  const ohms = /^([\d.]+)-([\d.]+)$/.exec(o.supplyOhms.trim());
  const low = ohms ? Number(ohms[1]) : numberOf('supply-ohms', o.supplyOhms, 'mΩ or a range of it, such as 2-8');
  const high = ohms ? Number(ohms[2]) : low;
  return {
    supply: {
      resting: resting.volts,
      charging: charging === null || Number.isNaN(charging.volts) ? null : charging.volts,
      ohms: { value: (low + high) / 2000, low: low / 1000, high: high / 1000 },
      direct: resting.direct && (charging?.direct ?? true),
    },
    load: {
      kind: load.kind,
      steady: load.amount,
      peak: peak && {
        amount: peak.amount,
        share: numberOf('peak-share', o.peakShare, 'a share of the time, such as 0.2', USUAL_RUN.peakShare),
        seconds: numberOf('peak-seconds', o.peakSeconds, 'seconds, such as 30', USUAL_RUN.peakSeconds),
      },
      efficiency:
        load.kind === 'watts' ? numberOf('efficiency', o.efficiency, 'a share, such as 0.8', USUAL_RUN.efficiency) : 1,
    },
    length,
    back: returnOf(o.return, length),
    joints: [
      {
        name: 'joints',
        count: 1,
        ohms: numberOf('joints', o.joints, 'mΩ of all joints, such as 0.9', 1000 * usualJointOhms()) / 1000,
      },
    ],
    surroundings: {
      ambient: numberOf('ambient', o.ambient, '°C, such as 40', USUAL_RUN.ambient - ZERO_CELSIUS) + ZERO_CELSIUS,
      bundle: numberOf('bundle', o.bundle, 'how many cables touch, such as 1'),
      layer: o.layer === undefined ? null : layerOf(o.layer),
    },
    allowedDrop: dropOf(o.drop, resting.volts),
    measured: o.measured === undefined ? null : measuredOf(o.measured, o.installed),
  };
}

/** What was left to the usual, for the line that says what was asked. */
export const takenOf = (o: RunOptions): string[] =>
  usualTaken(
    { watts: !/a(mps?)?\s*$/i.test(o.load), peak: o.peak !== undefined, resting: voltsOf('supply', o.supply).volts },
    {
      peakSeconds: o.peakSeconds === undefined,
      peakShare: o.peakShare === undefined,
      efficiency: o.efficiency === undefined,
      charging: o.charging === undefined,
      ambient: o.ambient === undefined,
      drop: o.drop === undefined,
      joints: o.joints === undefined,
      body: o.return.trim().toLowerCase() === 'body',
    },
  );
