import {
  type CoilEdge,
  coilRatio,
  radiusFromDiameter,
  radiusFromTurns,
  type Uncertain,
} from '../../methods/flex/coil.ts';
import { pieceSign } from '../../trial/plainWords.ts';
import type { Reading } from '../../trial/trial.ts';
import { ZERO_CELSIUS } from '../../units/dimension.ts';
import { measuredFromU } from '../measured.ts';
import type { CableReadings } from '../rows/rowsOfTrial.ts';
import type { Measured } from '../schema.ts';
import { meanTemperature } from './atTemperature.ts';
import type { BendReadings, MeanReading } from './bendReadings.ts';

/** A figure at a temperature, °C; where there are readings and no figure, why. */
export interface AtTemperature {
  figure: Measured | null;
  temperature_C: number | null;
  why: string;
}

const NOTHING: AtTemperature = { figure: null, temperature_C: null, why: '' };
const nothing = (why: string): AtTemperature => ({ ...NOTHING, why });
/** A turn is told to an eighth by eye. Common practice, no source. */
const TURN_HALF_WIDTH = 1 / 8;

const celsius = (readings: readonly Reading[]): number | null => {
  const kelvin = meanTemperature(readings);
  return kelvin === null ? null : kelvin - ZERO_CELSIUS;
};

/** Standard uncertainty of a mean: its scatter, and its tool's limit as uniform. */
function uncertain(m: MeanReading): Uncertain {
  const limit = m.tool.limit.absolute + m.tool.limit.fraction * Math.abs(m.value);
  return { value: m.value, u: Math.sqrt(m.variance + limit ** 2 / 3) };
}

function edgeOf(readings: readonly Reading[]): CoilEdge {
  const position = readings[0].position.toLowerCase();
  if (position.includes('inside') || position.includes('inner')) return 'inside';
  return position.includes('outside') || position.includes('outer') ? 'outside' : 'middle';
}

/** Length that was wound up: of the piece, else as it was cut to. */
function woundLength(cable: CableReadings, specimen: string): Uncertain | null {
  const measured = cable.groups.on(specimen, 'specimen_length');
  if (measured) {
    const { absolute, fraction } = measured.tool.limit;
    const limit = absolute + fraction * measured.mean;
    return { value: measured.mean, u: Math.sqrt(measured.scatter.variance + limit ** 2 / 3) };
  }
  const piece = cable.specimens.find((s) => s.specimen === specimen);
  return piece?.cutLength ? { value: piece.cutLength, u: 0.001 / Math.sqrt(3) } : null;
}

/** Tightest coil by hand as a multiple of the outer diameter, from its diameter, else from its turns in the piece's length. */
export function coilOf(cable: CableReadings, bend: BendReadings, level: number): AtTemperature {
  const group = cable.groups.of('outer_diameter')[0];
  const own = bend.all.filter((r) => r.cable === cable.cable.cable && r.quantity.startsWith('coil_'));
  if (own.length === 0) return NOTHING;
  const sign = pieceSign(cable, own[0].specimen);
  if (!group)
    return nothing(
      `The coil of ${sign} is not told as a multiple of the cable: measure the outer diameter of the cable.`,
    );
  const limit = group.tool.limit.absolute + group.tool.limit.fraction * group.mean;
  const outer = { value: group.mean, u: Math.sqrt(group.scatter.variance + limit ** 2 / 3) };
  const across = own.filter((r) => r.quantity === 'coil_diameter');
  const turned = own.filter((r) => r.quantity === 'coil_turns');
  const readings = across.length > 0 ? across : turned;
  const mean = bend.meanOf(readings)!;
  let radius: Uncertain;
  if (across.length > 0) {
    const coil = uncertain(mean);
    radius = { value: radiusFromDiameter(coil, edgeOf(across), outer.value), u: coil.u / 2 };
  } else {
    const length = woundLength(cable, turned[0].specimen);
    if (!length) return nothing(`The turns of ${sign} need the length that was wound up: measure the piece.`);
    radius = radiusFromTurns(length, {
      value: mean.value,
      u: Math.hypot(Math.sqrt(mean.variance), TURN_HALF_WIDTH / Math.sqrt(3)),
    });
  }
  if (!(radius.value > outer.value / 2))
    return nothing(
      `The coil of ${sign} is tighter than a cable of ${(outer.value * 1000).toFixed(1)} mm can be wound at all: check it and its unit.`,
    );
  const ratio = coilRatio(radius, outer);
  const from = [mean.quantity, 'outer_diameter'];
  return {
    figure: measuredFromU(ratio.value, ratio.u, { scale: 1, unit: '1', level, from, dof: mean.dof }),
    temperature_C: celsius(readings),
    why: '',
  };
}

/** Share of a bend that springs back, the mean of what was read. */
export function springBackOf(cable: CableReadings, bend: BendReadings, level: number): AtTemperature {
  const read = bend.all.filter((r) => r.cable === cable.cable.cable && r.quantity === 'spring_back');
  const own = read.filter((r) => r.value <= 1);
  const mean = bend.meanOf(own);
  const tooMuch = read.find((r) => r.value > 1);
  const why = tooMuch
    ? `${pieceSign(cable, tooMuch.specimen)} cannot spring back by more than all of its bend, and ${Math.round(100 * tooMuch.value)} % was read: left out.`
    : '';
  if (!mean) return nothing(why);
  const { value, u } = uncertain(mean);
  const figure = measuredFromU(value, Math.max(u, mean.step / Math.sqrt(12)), {
    scale: 1,
    unit: '1',
    level,
    from: ['spring_back'],
    dof: mean.dof,
  });
  return { figure, temperature_C: celsius(own), why };
}
