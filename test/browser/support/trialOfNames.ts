import type { Entry } from '../../../src/journal/entry.ts';

/** A small invented trial with one weighed cable for each name. */
export function trialOfNames(trial: string, names: readonly string[]): Entry[] {
  const rows: [string, Record<string, string>][] = [['trial', { trial, title: trial, place: '<i>shed</i>' }]];
  names.forEach((maker, index) => {
    const cable = `c${index}`;
    rows.push(['cable', { cable, maker, claimed_size: '2 AWG', claimed_metal: 'OFC' }]);
    rows.push(['specimen', { specimen: `s${index}`, cable, kind: 'apart' }]);
    rows.push([
      'reading',
      { reading: `l${index}`, specimen: `s${index}`, quantity: 'conductor_length', value: '300', unit: 'mm' },
    ]);
    rows.push([
      'reading',
      { reading: `m${index}`, specimen: `s${index}`, quantity: 'conductor_mass', value: '95.6', unit: 'g' },
    ]);
  });
  return rows.map(([kind, body], index) => ({
    id: `01900000-0000-7000-8000-${index.toString(16).padStart(12, '0')}`,
    trial,
    kind,
    at: '2026-10-03T10:00:00.000Z',
    by: '',
    device: '',
    body,
  }));
}
