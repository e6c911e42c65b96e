/** An invented trial for timing the page: planned, cut, and all but its last readings taken. */
import { benchList } from '../src/findings/nextAct.ts';
import type { Entry } from '../src/journal/entry.ts';
import { quantityNamed } from '../src/journal/quantities.ts';
import { fold } from '../src/trial/fold.ts';

export { startedBench } from '../test/support/builtProgram.ts';
export { packageOf } from './bigPackage.ts';

type Row = readonly [kind: string, body: Record<string, string>];

/** Pieces to take apart, and repeats: with ohms, strands and wall they make sixty readings for each cable. */
const APART = 4;
const REPEATS = 5;

/** What a 2 AWG copper cable reads, by quantity: about how much, decimals, unit, tool. */
const READS: Readonly<Record<string, readonly [about: number, decimals: number, unit: string, tool: string]>> = {
  resistance: [1.02, 3, 'mohm', 'meter'],
  specimen_mass: [121.4, 2, 'g', 'scale'],
  conductor_length: [300, 1, 'mm', 'rule'],
  conductor_mass: [91.2, 2, 'g', 'scale'],
  jacket_mass: [30.1, 2, 'g', 'scale'],
  strand_count: [665, 0, '', ''],
  strand_diameter: [0.254, 3, 'mm', 'micrometer'],
  outer_diameter: [12.1, 2, 'mm', 'caliper'],
  conductor_diameter: [8.1, 2, 'mm', 'caliper'],
  wall_thickness: [1.9, 2, 'mm', 'caliper'],
};

/** A reading of that quantity, a little other each time. */
function madeUp(quantity: string, n: number): string {
  const [about, decimals] = READS[quantity]!;
  return (about * (1 + (((n * 7919) % 21) - 10) / 20_000)).toFixed(decimals);
}

/** What to type when the bench asks for the quantity of that name. */
export function readsOf(head: string, n: number): string {
  const named = Object.keys(READS).find(
    (quantity) => quantityNamed(quantity)!.name.toLowerCase() === head.toLowerCase(),
  );
  if (named === undefined) throw new Error(`the bench asks for "${head}", which this case does not know`);
  return madeUp(named, n);
}

function planned(trial: string, cables: number): Row[] {
  const tool = (instrument: string, kind: string, resolution: string, unit: string): Row => [
    'instrument',
    { instrument, kind, resolution, unit },
  ];
  return [
    ['trial', { trial, title: 'Twelve at the bench', target_temperature: '20' }],
    tool('scale', 'pocket scale', '0.01', 'g'),
    tool('rule', 'steel rule', '0.5', 'mm'),
    tool('meter', 'four-wire meter', '0.001', 'mohm'),
    tool('caliper', 'digital caliper', '0.01', 'mm'),
    tool('micrometer', 'micrometer', '0.001', 'mm'),
    ['setting', { setting: 'methods', value: 'ohms, weigh, strands, wall' }],
    ['setting', { setting: 'repeats', value: String(REPEATS) }],
    ...Array.from({ length: cables }, (_, place): Row[] => {
      const cable = `c${place}`;
      const piece = (specimen: string, kind: string, length: string): Row => [
        'specimen',
        { specimen, cable, kind, code: `K${String.fromCharCode(65 + place)}`, cut_length: length },
      ];
      return [
        ['cable', { cable, maker: `Maker ${place}`, claimed_size: '2 AWG', claimed_metal: 'copper' }],
        piece(`${cable}-whole`, 'whole', '2000'),
        ...Array.from({ length: APART }, (_, n) => piece(`${cable}-${n}`, 'apart', '300')),
      ];
    }).flat(),
  ];
}

function entryOf(trial: string, [kind, body]: Row, place: number): Entry {
  const id = `01900000-0000-7000-8000-${place.toString(16).padStart(12, '0')}`;
  return { id, trial, kind, at: '2026-10-03T10:00:00.000Z', by: 'Ann', device: 'laptop', body };
}

/** The trial with all but the last `left` readings of its plan taken; `readings` is how many the plan wants. */
export function halfReadTrial(cables: number, left: number): { trial: string; entries: Entry[]; readings: number } {
  const trial = 'twelve';
  const first = planned(trial, cables).map((row, place) => entryOf(trial, row, place));
  const { acts } = benchList(fold(first));
  const taken = acts.slice(0, -left).map(({ item: { specimen, quantity } }, n): Row => {
    const [, , unit, instrument] = READS[quantity]!;
    const at = new Date(Date.UTC(2026, 9, 3, 8) + n * 10_000).toISOString();
    const length: Record<string, string> = quantity === 'resistance' ? { at_length: '1900', at_length_unit: 'mm' } : {};
    const row = { reading: `r${n}`, specimen, quantity, value: madeUp(quantity, n), unit, instrument, at, ...length };
    return ['reading', { ...row, temperature: '20.5' }];
  });
  const later = taken.map((row, place) => entryOf(trial, row, first.length + place));
  return { trial, entries: [...first, ...later], readings: acts.length };
}
