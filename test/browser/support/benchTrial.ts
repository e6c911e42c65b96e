import type { Entry } from '../../../src/journal/entry.ts';

type Row = readonly [kind: string, body: Record<string, string>];

/** What a 2 AWG copper cable of a weighed 300 mm and an ohmed 2 m reads, by quantity and with its unit. */
export const READS: Readonly<Record<string, readonly [value: string, unit: string]>> = {
  resistance: ['1.02', 'mohm'],
  specimen_mass: ['121.4', 'g'],
  conductor_length: ['300', 'mm'],
  conductor_mass: ['91.2', 'g'],
  jacket_mass: ['30.1', 'g'],
};

/** The quantities as the bench heads them. */
export const HEADS: Readonly<Record<string, string>> = {
  Resistance: 'resistance',
  'Mass of the whole piece': 'specimen_mass',
  'Length of the bare conductor': 'conductor_length',
  'Mass of the conductor': 'conductor_mass',
  'Mass of the jacket': 'jacket_mass',
};

/** An invented trial that is planned and cut, with nothing read yet: ohms once, masses once, lengths twice. */
export function plannedTrial(trial: string, codes: readonly string[], repeats = 1): Entry[] {
  const rows: Row[] = [
    ['trial', { trial, title: `Bench ${trial}`, target_temperature: '20' }],
    ['instrument', { instrument: 'scale', kind: 'pocket scale', resolution: '0.01', unit: 'g', max_error: '0.03' }],
    ['instrument', { instrument: 'rule', kind: 'steel rule', resolution: '0.5', unit: 'mm' }],
    ['instrument', { instrument: 'meter', kind: 'four-wire meter', resolution: '0.001', unit: 'mohm' }],
    ['setting', { setting: 'methods', value: 'ohms, weigh' }],
    ['setting', { setting: 'repeats', value: String(repeats) }],
    ...codes.flatMap((code, place): Row[] => {
      const cable = `cable-${place + 1}`;
      return [
        ['cable', { cable, maker: `Maker ${place + 1}`, claimed_size: '2 AWG', claimed_metal: 'copper' }],
        ['specimen', { specimen: `${cable}-whole`, cable, code, cut_length: '2000', kind: 'whole' }],
        ['specimen', { specimen: `${cable}-apart`, cable, code, cut_length: '300', kind: 'apart' }],
      ];
    }),
  ];
  return rows.map(([kind, body], place) => said(trial, kind, body, place));
}

/** An entry as another device would have said it long ago. */
export function said(trial: string, kind: string, body: Record<string, string>, place: number): Entry {
  const id = `01900000-0000-7000-8000-${place.toString(16).padStart(12, '0')}`;
  return { id, trial, kind, at: '2026-10-03T10:00:00.000Z', by: 'somebody', device: 'laptop', body };
}
