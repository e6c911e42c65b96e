/** A large invented journal for timing the fold: readings as a bench writes them, with corrections, judgements and a swap. */
import type { Entry } from '../src/journal/entry.ts';
import { NO_ID_YET, newId, RANDOM_BYTES } from '../src/journal/newId.ts';

export { fold } from '../src/trial/fold.ts';

const CABLES = 40;
const PIECES_EACH = 5;
const OPENED = Date.UTC(2026, 9, 3, 8);
/** One reading every ten seconds. */
const PACE = 10_000;

/** What is read, in turn: quantity, unit, about how much, decimals, tool. */
const READ = [
  ['conductor_mass', 'g', 93, 2, 'scale'],
  ['jacket_mass', 'g', 31, 2, 'scale'],
  ['specimen_mass', 'g', 124, 2, 'scale'],
  ['specimen_length', 'mm', 300, 1, 'rule'],
  ['outer_diameter', 'mm', 12.1, 2, 'caliper'],
  ['wall_thickness', 'mm', 1.9, 2, 'caliper'],
  ['strand_count', '', 665, 0, ''],
  ['resistance', 'mohm', 0.16, 4, 'meter'],
] as const;

type Body = Record<string, string>;

function described(): [string, Body][] {
  const cables = Array.from({ length: CABLES }, (_, i): [string, Body] => [
    'cable',
    { cable: `c${i}`, maker: `Maker ${i}`, claimed_size: '2 AWG', claimed_metal: 'copper', bought_length: '3' },
  ]);
  const pieces = Array.from({ length: CABLES * PIECES_EACH }, (_, i): [string, Body] => [
    'specimen',
    { specimen: `p${i}`, cable: `c${i % CABLES}`, cut_length: '300', cut_length_unit: 'mm', kind: 'apart' },
  ]);
  const tools = (
    [
      ['scale', 'pocket scale', '0.01', 'g'],
      ['rule', 'steel rule', '0.5', 'mm'],
      ['caliper', 'digital caliper', '0.01', 'mm'],
      ['meter', 'four-wire meter', '0.0001', 'mohm'],
    ] as const
  ).map(([instrument, kind, resolution, unit]): [string, Body] => [
    'instrument',
    { instrument, kind, resolution, unit },
  ]);
  return [
    ['trial', { trial: 'club', title: 'Club trial', opened_on: '2026-10-03', target_temperature: '20' }],
    ...cables,
    ...pieces,
    ...tools,
  ];
}

function measured(i: number): [string, Body] {
  const at = new Date(OPENED + i * PACE + ((i * 37) % 1000)).toISOString();
  const piece = i % (CABLES * PIECES_EACH);
  if (i % 50 === 49) return ['strike', { reading: `r${i - 7}`, why: 'scale not level', at }];
  if (i % 20 === 19)
    return [
      'judgement',
      { judgement: `j${i}`, left: `p${piece}`, right: `p${(piece + 7) % 200}`, result: 'left', at, by: 'Ann' },
    ];
  const [quantity, unit, about, decimals, instrument] = READ[Math.floor(i / 200) % READ.length]!;
  const value = (about * (1 + ((i * 7919) % 101) / 10_000)).toFixed(decimals);
  const body: Body = {
    reading: `r${i}`,
    specimen: `p${piece}`,
    quantity,
    value,
    unit,
    at,
    by: 'Ann',
    temperature: '20.5',
  };
  if (instrument !== '') body.instrument = instrument;
  if (quantity === 'resistance') Object.assign(body, { at_length: '290', at_length_unit: 'mm' });
  if (i % 40 === 17) Object.assign(body, { replaces: `r${i - 1}`, why: 'digits swapped' });
  return ['reading', body];
}

/** A journal of so many entries, in the order of their ids. */
export function journalOf(count: number): Entry[] {
  const first = described();
  const rows = [...first, ...Array.from({ length: count - first.length }, (_, i) => measured(i))];
  let state = NO_ID_YET;
  return rows.map(([kind, body], i) => {
    const time = OPENED + i * PACE;
    const random = new Uint8Array(RANDOM_BYTES).map((_, byte) => (i * 31 + byte * 17) & 0xff);
    const made = newId(state, time, random);
    state = made.state;
    return { id: made.id, trial: 'club', kind, at: new Date(time).toISOString(), by: 'Ann', device: 'bench', body };
  });
}
