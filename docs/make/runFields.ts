/** What `cupel run --json` prints, field by field, for docs/file-format.md. */
import { code, markdownTable } from './markdownTable.ts';

/** A figure with the ends of all doubts together. */
const BETWEEN = 'value and interval';
const EITHER = 'number or null';

const STATE: readonly (readonly [field: string, holds: string, meaning: string])[] = [
  ['supply_V', 'number', 'Volts of the supply, V.'],
  ['at_load_V', BETWEEN, 'Left at the load at its peak, V.'],
  ['lost_V', BETWEEN, 'Lost between supply and load at the peak, V.'],
  ['lost_steady_V', BETWEEN, 'The same at the steady load, V.'],
  ['steady_A', BETWEEN, 'Current at the steady load, in all runs together, A.'],
  ['peak_A', BETWEEN, 'Current at the peak, A; the steady one where there is no peak.'],
  ['lost_W', BETWEEN, 'Made into heat on the way, mean over the whole duty, W.'],
  ['conductor_C', BETWEEN, 'Conductor in the long run, °C.'],
  ['hottest_C', BETWEEN, 'Conductor at the end of a peak, °C.'],
  ['fails', 'text or null', 'Set where nothing settles at one of the ends: not enough volts, or melts.'],
];

const FUSE: typeof STATE = [
  ['rating_A', EITHER, 'Least standard rating that does, A; null when none fits.'],
  ['fits_A', 'list of number', 'Every standard rating that would do, A.'],
  [
    'let_through',
    'object or null',
    'Heat that a short lets through before the fuse opens, over what the conductor bears; 1 at most.',
  ],
  ['let_through.far', 'number', 'For a short at the far end.'],
  ['let_through.near', 'number', 'For a short near the source.'],
  ['text', 'text', 'The same in words.'],
];

const under = (field: string, rows: typeof STATE): typeof STATE =>
  rows.map(([name, holds, meaning]) => [`${field}.${name}`, holds, meaning]);

/** Every field by its path; `[]` stands for each item of a list. */
export const RUN_FIELDS: typeof STATE = [
  ['question', 'text', 'What was asked, in one sentence, with what was taken as usual.'],
  ['taken', 'list of text', 'What nobody stated and was taken as usual, each with its figure and unit.'],
  ['problems', 'list of text', 'Always empty here: a run that cannot be checked ends with its sentences instead.'],
  ['sentence', 'text', 'The answer: which cables and which nominal size do, by one run or side by side.'],
  ['least_size', 'text or null', 'Thinnest nominal size that does with one run; null when none does.'],
  ['meets', 'list of text', 'Measured cables that do with one run, the thinnest first.'],
  ['cables', 'list of object', 'Measured cables, then nominal sizes.'],
  ['cables[].cable', 'text', 'Short name of the cable, or name of the size.'],
  ['cables[].name', 'text', 'Its name as shown.'],
  ['cables[].measured', 'true or false', 'False for a nominal size that stands for reference.'],
  ['cables[].area_mm2', 'number', 'Metal area, mm².'],
  ['cables[].rating_C', 'number', 'Temperature that its jacket bears, °C.'],
  ['cables[].rating_assumed', 'true or false', 'True when none is stated and the lowest usual one was taken.'],
  ['cables[].resting', 'object', 'One run with the supply at rest.'],
  ...under('cables[].resting', STATE),
  [
    'cables[].charging',
    'object or null',
    'One run while the supply charges; null where nothing charges it. It holds the same fields.',
  ],
  [
    'cables[].drop',
    BETWEEN,
    'Share of the supply’s volts that is lost at the peak, 0 to 1, at the worse of the two supplies.',
  ],
  ['cables[].hottest_C', BETWEEN, 'Hottest that the conductor comes to, °C, at the worse of the two supplies.'],
  [
    'cables[].feeds',
    '`yes`, `not settled`, `no`',
    'Whether the load is fed: at every end of the doubts, at some of them, or not even by the middle figures.',
  ],
  ['cables[].outcomes', 'object', 'Outcome of one run.'],
  ['cables[].outcomes.drop', '`meets`, `falls short`, `not settled`', 'On volts.'],
  ['cables[].outcomes.heat', 'the same, or null', 'On heat; null where nothing is fed.'],
  ['cables[].outcomes.all', '`meets`, `falls short`, `not settled`', 'The worse of the two.'],
  [
    'cables[].surroundings_too_hot',
    'true or false',
    'True when the surroundings alone are as hot as the rating: nothing may flow, by any number of runs.',
  ],
  ['cables[].margin_K', BETWEEN, 'How far the hottest stays below the rating, K; negative above it.'],
  ['cables[].carrying_A', BETWEEN, 'Current that one run bears for ever in these surroundings, A.'],
  ['cables[].runs_needed', EITHER, 'Fewest runs side by side that do on volts and heat; null when not even six do.'],
  ['cables[].mass_kg', EITHER, 'Mass of so many runs, kg; null when not known or none do.'],
  ['cables[].cost', 'object or null', 'Price of so many runs; null when not known or none do.'],
  ['cables[].cost.amount', 'number', 'In its currency.'],
  ['cables[].cost.currency', 'text', 'As typed; may be empty.'],
  ['cables[].fuse', 'object', 'Fuse of one run by itself.'],
  ...under('cables[].fuse', FUSE),
  [
    'cables[].fuse_each',
    'object or null',
    'Fuse in each of the runs side by side, A; the same as `fuse` where one run does, null when no number of runs does. It holds the same fields.',
  ],
  ['cables[].text', 'text', 'Outcome and fuse in words.'],
  ['curves', 'list of object', 'The same against the length of the run.'],
  ['curves[].cable', 'text', 'Short name of the cable, or name of the size.'],
  ['curves[].measured', 'true or false', 'False for a nominal size.'],
  ['curves[].points', 'list of object', 'Lengths from short to long.'],
  ['curves[].points[].length_m', 'number', 'One way out, m.'],
  [
    'curves[].points[].drop',
    EITHER,
    'Share of the supply’s volts that is lost, 0 to 1; null where nothing comes through.',
  ],
  ['curves[].points[].drop_interval', '2 numbers or null', 'Its ends.'],
  ['curves[].points[].hottest_C', EITHER, 'Hottest conductor, °C; null where nothing comes through.'],
  ['curves[].points[].hottest_high_C', EITHER, 'Its upper end, °C.'],
  ['estimate', 'text', 'The line that goes with every run.'],
  [
    'overload',
    'list of object',
    'How long one run of each measured cable lasts, at `--overload` or, without it, at the load’s own peak as if that never ended; cables that may not feed the load are then left out.',
  ],
  ['overload[].cable', 'text', 'Short name of the cable.'],
  ['overload[].current_A', 'number', 'Current in the one run, A.'],
  [
    'overload[].seconds_to_rating',
    EITHER,
    'From cold until the conductor stands at the rating, s, at the careful end of every doubt; null when it does not in six hours.',
  ],
  ['profile', 'list of object or null', 'Under the load of `--profile`; null without one.'],
  ['profile[].cable', 'text', 'Short name of the cable.'],
  ['profile[].name', 'text', 'Its name as shown.'],
  ['profile[].peak_C', 'number', 'Hottest conductor, °C.'],
  ['profile[].peak_at_s', 'number', 'When, s after the start.'],
  ['profile[].margin_K', 'number', 'How far that stays below the rating, K.'],
  ['profile[].lost_V', 'number', 'Most that is lost on the way, V.'],
  ['profile[].lost_Wh', 'number', 'Lost on the way in all, Wh.'],
  ['left_out', 'list of object', 'Cables of the trial that cannot be run.'],
  ['left_out[].cable', 'text', 'Short name of the cable.'],
  ['left_out[].name', 'text', 'Its name as shown.'],
  ['left_out[].text', 'text', 'Why.'],
];

export const runFields = (): string =>
  markdownTable(
    ['field', 'holds', 'meaning'],
    RUN_FIELDS.map(([field, holds, meaning]) => [code(field), holds, meaning]),
  );
