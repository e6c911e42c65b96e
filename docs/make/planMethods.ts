/** The words of the setting `methods` in plan.csv, for docs/file-format.md. */
import type { BendWish, FOUR_WIRE_WISH, PlanMethod } from '../../src/findings/plan/settings.ts';
import { code, markdownTable } from './markdownTable.ts';

type Word = PlanMethod | BendWish | typeof FOUR_WIRE_WISH | 'amps' | 'inside' | 'jacket';

const WORDS: Readonly<Record<Word, string>> = {
  ohms: 'Resistance of the whole bought length, before the first cut.',
  'four-wire':
    'Ohms by volts and amps, beside or instead of a meter: the voltage (mV or V) between contacts inside the clamps of the current (A), at several currents and both ways round. They stand in currents.csv, and their slope is the resistance.',
  bend: 'Droop of a piece that hangs free.',
  push: 'Bending: force against push.',
  coil: 'Bending: the tightest coil.',
  spring: 'Bending: what springs back.',
  judge: 'Bending: pairs judged by hand.',
  weigh: 'Mass of a piece taken apart.',
  strands: 'Count and diameter of its strands.',
  eye: 'Looks: scraped strand, magnet, print.',
  wall: 'Wall of the jacket round the cut face.',
  abuse: 'Endurance of the jacket.',
  amps: 'Heating and current; nothing is planned for it beforehand.',
  inside: 'The same as ohms, weigh, strands and eye.',
  jacket: 'The same as wall and abuse.',
};

export const planMethods = (): string =>
  markdownTable(
    ['word', 'what is done'],
    Object.entries(WORDS).map(([word, meaning]) => [code(word), meaning]),
  );
