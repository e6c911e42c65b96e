/** Small trials for the tests of planning, folded from entries as a bench would write them. */
import type { Entry } from '../../../src/journal/entry.ts';
import { fold } from '../../../src/trial/fold.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { entry } from '../../trial/entries.ts';

export const TOOLS: Entry[] = [
  entry('instrument', { instrument: 'scale', kind: 'pocket scale', resolution: '0.01', unit: 'g' }),
  entry('instrument', { instrument: 'rule', kind: 'steel rule', resolution: '0.5', unit: 'mm' }),
  entry('instrument', { instrument: 'meter', kind: 'four-wire meter', resolution: '0.001', unit: 'mohm' }),
  entry('instrument', { instrument: 'probe', kind: 'thermometer', resolution: '0.1', unit: 'C' }),
];

export const DESCRIBED = entry('trial', { trial: 'club', title: 'Club trial', target_temperature: '20' });

export function cable(name: string, more: Record<string, string> = {}): Entry {
  return entry('cable', {
    cable: name,
    maker: name,
    claimed_size: '1/0 AWG',
    claimed_metal: 'OFC',
    bought_length: '3',
    ...more,
  });
}

export const setting = (name: string, value: string): Entry => entry('setting', { setting: name, value });

/** The described trial with the usual tools, and whatever is said beside. */
export function trialOf(...entries: Entry[]): Trial {
  return fold([DESCRIBED, ...TOOLS, ...entries]);
}
