/** Which entries a part of a trial holds: those of its places, as they were when it was sealed. */
import type { Entry } from '../journal/entry.ts';
import type { PartPlace } from '../journal/kinds/seal.ts';
import { mergeEntries } from '../journal/merge.ts';
import { BEND_QUANTITIES, type QuantityName } from '../journal/quantities.ts';
import { cell } from './cells.ts';
import { heldAmong } from './heldRows.ts';

const LENGTHS: readonly QuantityName[] = ['specimen_length', 'conductor_length'];
const DIAMETERS: readonly QuantityName[] = ['outer_diameter', 'conductor_diameter'];
const OHMS: readonly QuantityName[] = ['resistance', 'test_voltage', 'test_current'];
const INSIDE: readonly QuantityName[] = [
  ...LENGTHS,
  ...DIAMETERS,
  ...OHMS,
  'specimen_mass',
  'conductor_mass',
  'jacket_mass',
  'separator_mass',
  'strands_lost',
  'residue',
  'strand_count',
  'bundle_count',
  'strands_in_bundle',
  'strand_diameter',
  'strand_row_width',
  'strand_row_count',
  'strand_sample_mass',
  'strand_sample_count',
  'strand_sample_length',
  'lay_length',
];

/** The readings that the figures of each place rest on; none for the standing, which rests on those of the others. */
const QUANTITIES_OF: Readonly<Record<PartPlace, readonly QuantityName[]>> = {
  inside: INSIDE,
  bend: ['specimen_length', 'specimen_mass', 'outer_diameter', ...BEND_QUANTITIES],
  jacket: [
    ...LENGTHS,
    ...DIAMETERS,
    'jacket_mass',
    'submerged_mass',
    'wall_thickness',
    'mass_before',
    'mass_after',
    'diameter_before',
    'diameter_after',
    'hardness',
  ],
  amps: [...OHMS, ...DIAMETERS, ...LENGTHS, 'conductor_mass', 'wall_thickness'],
  standing: [],
};

/** Rows that belong to one place alone. */
const PLACE_OF: Readonly<Record<string, PartPlace>> = {
  fitting: 'inside',
  evidence: 'inside',
  judgement: 'bend',
  endurance: 'jacket',
  current: 'amps',
};

/** Rows that every part holds: what was compared, by what tools, on which pieces. */
const ALWAYS: ReadonlySet<string> = new Set(['trial', 'cable', 'instrument', 'check', 'specimen', 'retag', 'blinding']);

const aboutOf = (body: Entry['body']): string => cell(body, 'about').toLowerCase();

/**
 * The part of a journal that a part of the trial holds. What belongs to other places is left out of it altogether, so that nothing
 * of a later part can be read out of its data.
 *
 * @param holds marks of the rows that were sealed: what arrived later stays out, however early its time; null for the journal as it
 *   stands now
 */
export function partEntries(
  entries: readonly Entry[],
  { holds, places }: { holds: ReadonlyMap<string, number> | null; places: readonly PartPlace[] },
): Entry[] {
  const all = mergeEntries(entries);
  const said = holds === null ? all : heldAmong(all, holds);
  const quantities = new Set<string>(places.flatMap((place) => QUANTITIES_OF[place]));
  const held = new Set(
    said
      .filter(({ kind, body }) => kind === 'reading' && quantities.has(cell(body, 'quantity').toLowerCase()))
      .map(({ body }) => cell(body, 'reading')),
  );
  const belongs = ({ kind, body }: Entry): boolean => {
    if (ALWAYS.has(kind)) return true;
    if (kind === 'reading' || kind === 'strike') return held.has(cell(body, 'reading'));
    if (kind === 'note') return cell(body, 'about').toLowerCase() !== 'reading' || held.has(cell(body, 'which'));
    if (kind === 'setting') return places.includes('standing') || !cell(body, 'setting').startsWith('standing_');
    // What a part holds is held with what put it aside, or the part would count what the trial does not.
    const place = PLACE_OF[kind === 'withdrawal' ? aboutOf(body) : kind];
    if (kind === 'withdrawal' && ALWAYS.has(aboutOf(body))) return true;
    return place !== undefined && places.includes(place);
  };
  return said.filter(belongs);
}
