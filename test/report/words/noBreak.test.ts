import { describe, expect, it } from 'vitest';
import { noBreak } from '../../../src/report/words/noBreak.ts';

/** With ~ for a no-break space, so that it can be seen. */
const shown = (text: string) => noBreak(text).replaceAll('\u00a0', '~');

describe('noBreak', () => {
  it.each([
    ['Holds 85 % of the copper', 'Holds 85~% of the copper'],
    ['103.5 ± 0.9 %', '103.5~±~0.9~%'],
    ['33 to 79 mm²', '33 to 79~mm²'],
    ['±(1 g + 0.5 %)', '±(1~g + 0.5~%)'],
    ['asks ≥ 32.96 mm²', 'asks ≥~32.96~mm²'],
    ['0.76 mΩ/m at 20 °C', '0.76~mΩ/m at 20~°C'],
    ['about 2.3 AWG, 300 mm long', 'about 2.3~AWG, 300~mm long'],
    ['1 gauge is not 1 g', '1 gauge is not 1~g'],
    ['3 of 10 strands, 2 more', '3 of 10 strands, 2 more'],
    ['4 metres and 12 inches', '4 metres and 12 inches'],
    ['', ''],
  ])('%s', (text, wanted) => {
    expect(shown(text)).toBe(wanted);
  });

  it('changes nothing but spaces, and nothing the second time', () => {
    const text = 'Holds 85 ± 2 % of 33.6 mm²; the scale would have to read 3.2 g too high.';
    expect(noBreak(text).replaceAll('\u00a0', ' ')).toBe(text);
    expect(noBreak(noBreak(text))).toBe(noBreak(text));
  });
});
