import type { EnduranceTest } from '../../findings/shapes/jacket.ts';
import { plainText } from '../figures.ts';

type Conditions = Pick<EnduranceTest, 'stress' | 'stress_unit' | 'temperature_C' | 'exposure' | 'unit'>;

/** `240 h`, `at 7 N`, `pieces at 19.8 °C`: what was the same for all pieces, as far as it was noted. */
export function testConditions({ stress, stress_unit, temperature_C, exposure, unit }: Conditions): string[] {
  return [
    exposure === null ? '' : plainText(exposure, exposure === 1 ? unit.replace(/s$/, '') : unit),
    stress === null ? '' : `at ${plainText(stress, stress_unit === 'C' ? '°C' : stress_unit)}`,
    temperature_C === null ? '' : `pieces at ${temperature_C.toFixed(1).replace('-', '−')} °C`,
  ].filter((part) => part !== '');
}
