import type { Entry } from '../../../src/journal/entry.ts';
import { said } from './benchTrial.ts';

type Row = readonly [kind: string, body: Record<string, string>];

/** An invented trial with pieces to abuse of each cable and one to take apart, described and coded, and nothing read. */
export function piecesToWear(
  trial: string,
  makers: readonly string[],
  { each = 2, more = [] }: { each?: number; more?: readonly Row[] } = {},
): Entry[] {
  const codes = ['KR', 'VN', 'TL', 'WD', 'GH', 'SB'];
  const rows: Row[] = [
    ['trial', { trial, title: `Jackets ${trial}`, target_temperature: '20' }],
    ['instrument', { instrument: 'caliper', kind: 'digital caliper', resolution: '0.01', unit: 'mm' }],
    ['setting', { setting: 'methods', value: 'wall, abuse' }],
    ...makers.flatMap((maker, place): Row[] => {
      const cable = `c${place}`;
      const code = codes[place]!;
      return [
        ['cable', { cable, maker, claimed_size: '2 AWG', jacket_colour: 'red' }],
        ['specimen', { specimen: `${cable}-a`, cable, code, cut_length: '300', kind: 'apart' }],
        ...Array.from(
          { length: each },
          (_, i): Row => [
            'specimen',
            { specimen: `${cable}-x${i + 1}`, cable, code, cut_length: '120', kind: 'abuse' },
          ],
        ),
      ];
    }),
    ...more,
  ];
  return rows.map(([kind, body], place) => said(trial, kind, body, place));
}
