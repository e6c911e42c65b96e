import { PNG } from 'pngjs';
import type { Entry } from '../../../src/journal/entry.ts';
import { said } from './benchTrial.ts';

/** An invented trial with a piece to bend of each cable, described and coded, and nothing read. */
export function piecesToBend(
  trial: string,
  makers: readonly string[],
  more: readonly [string, Record<string, string>][] = [],
): Entry[] {
  const codes = ['KR', 'VN', 'TL', 'WD', 'GH', 'SB'];
  const rows: [string, Record<string, string>][] = [
    ['trial', { trial, title: `Bend ${trial}`, target_temperature: '20' }],
    ['instrument', { instrument: 'rule', kind: 'steel rule', resolution: '0.5', unit: 'mm', max_error: '0.5' }],
    ['instrument', { instrument: 'kitchen', kind: 'kitchen scale', resolution: '1', unit: 'g' }],
    ['setting', { setting: 'methods', value: 'bend' }],
    ['setting', { setting: 'repeats', value: '2' }],
    ...makers.flatMap((maker, place): [string, Record<string, string>][] => [
      ['cable', { cable: `c${place}`, maker, claimed_size: '2 AWG', claimed_mass: '400 g/m', jacket_colour: 'red' }],
      [
        'specimen',
        { specimen: `c${place}-b`, cable: `c${place}`, code: codes[place]!, cut_length: '420', kind: 'bend' },
      ],
    ]),
    ...more,
  ];
  return rows.map(([kind, body], place) => said(trial, kind, body, place));
}

/** A picture of nothing but ground, as bytes: what is marked in it is up to the test. */
export function plainPhoto(width: number, height: number): Buffer {
  const png = new PNG({ width, height });
  png.data.fill(0xb8);
  return PNG.sync.write(png);
}
