import { needed, type TableShape, text } from '../tableShape.ts';

/** Places of a trial that a part may publish. */
export const PART_PLACES = ['inside', 'bend', 'jacket', 'amps', 'standing'] as const;
export type PartPlace = (typeof PART_PLACES)[number];

/**
 * A part that was sealed: which places, up to which entry, and what came out. The first row of a part's name stands for ever; a
 * later one can only change its title and whether it is hidden.
 */
export const SEAL_TABLE: TableShape = {
  kind: 'seal',
  file: 'parts.csv',
  key: null,
  columns: [
    needed(
      'part',
      'Name of the part, such as 1: up to 40 letters, digits, spaces, full stops, hyphens and underscores',
    ),
    text('title', 'Title as readers see it'),
    needed('places', 'What it publishes: inside, bend, jacket, amps, standing, with commas between'),
    needed('up_to', 'Last entry of the journal when it was sealed'),
    needed('content', 'SHA-256 of the rows that it holds, in one fixed form'),
    needed('findings', 'SHA-256 of its findings as text'),
    text('holds', 'Five characters of the hash of each row that it holds; goes on in holds_2 … where they are many'),
    text('level', 'Share of cases in which its intervals hold the true value; 0.95 when blank'),
    text('draws', 'Random draws that stood beside its closed form; 0 when blank'),
    text('version', 'Version of the program that computed it'),
    text('hidden', 'Whether readers do not see it yet', { values: ['yes', 'no'] }),
    text('at', 'When it was sealed', { moment: true }),
    text('by', 'Who sealed it'),
    text('note', 'Anything else'),
  ],
};
