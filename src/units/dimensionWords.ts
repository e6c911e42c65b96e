import type { Dimension } from './dimension.ts';

/** Each dimension in plain words with its article, a reading of that kind as people type it, and units to choose from. */
const WORDS: Record<Dimension, { name: string; example: string; units: string }> = {
  length: { name: 'a length', example: '150 mm', units: 'mm, cm, m, in, ft, mil' },
  mass: { name: 'a mass', example: '39.27 g', units: 'g, kg, mg, oz, lb' },
  resistance: { name: 'a resistance', example: '0.39 mΩ', units: 'Ω, mΩ, µΩ' },
  'resistance per length': {
    name: 'a resistance per length',
    example: '0.53 mΩ/m',
    units: 'mΩ/m, Ω/km, mΩ/ft, Ω/1000 ft',
  },
  'mass per length': { name: 'a mass per length', example: '310 g/m', units: 'g/m, kg/km, g/ft, oz/ft, lb/1000 ft' },
  area: { name: 'an area', example: '33.6 mm²', units: 'mm², cmil, kcmil' },
  temperature: { name: 'a temperature', example: '20 °C', units: '°C, °F, K' },
  angle: { name: 'an angle', example: '45°', units: '°, rad' },
  force: { name: 'a force', example: '12 N', units: 'N, kgf, gf, lbf' },
  voltage: { name: 'a voltage', example: '1.02 mV', units: 'V, mV, µV' },
  current: { name: 'a current', example: '10 A', units: 'A, mA' },
  power: { name: 'a power', example: '600 W', units: 'W, kW' },
  time: { name: 'a time', example: '90 s', units: 's, min, h, d' },
  density: { name: 'a density', example: '1.35 g/cm³', units: 'g/cm³, kg/m³' },
  count: { name: 'a count', example: '1064', units: 'no unit, or strands, turns' },
  ratio: { name: 'a share', example: '85 %', units: '%, or no unit' },
};

/** `a length`, `an area`: the dimension with its article, for sentences. */
export function dimensionName(dimension: Dimension): string {
  return WORDS[dimension].name;
}

/** `a length, such as 150 mm`: what a reader was hoping to find. */
export function dimensionWanted(dimension: Dimension): string {
  const { name, example } = WORDS[dimension];
  return `${name}, such as ${example}`;
}

/** `mm, cm, m, in, ft, mil`: units that are understood for this dimension. */
export function dimensionUnits(dimension: Dimension): string {
  return WORDS[dimension].units;
}
