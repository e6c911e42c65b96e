import { seedFromText } from '../../journal/textHash.ts';
import type { Trial } from '../../trial/trial.ts';
import type { TrialRows } from '../rows/rowsOfTrial.ts';
import type { CableFindings, Warning } from '../schema.ts';
import type { Jacket } from '../shapes/jacket.ts';
import { amountTest } from './enduranceTest.ts';
import { exposuresOf } from './exposures.ts';
import { jacketWarnings } from './jacketWarnings.ts';
import { passedTest } from './passedTest.ts';
import { readEndurance, type TestRead } from './readEndurance.ts';
import { testNotes, usedBefore } from './testNotes.ts';
import { jacketCableOf } from './walls.ts';

export interface JacketFound {
  /** null when nothing about jackets was read or tested. */
  jacket: Jacket | null;
  warnings: Warning[];
}

export interface JacketOptions {
  level: number;
  /** Hexadecimal seed; draws of this part have seeds of their own made from it. */
  seed: string;
}

/** A seed for one test, so that what is drawn for it does not move when another test is added. */
function seedOf(seed: string, { test, stress, stressUnit, unit, rows }: TestRead): string {
  return seedFromText(JSON.stringify([seed, 'jacket', test, stress, stressUnit, unit, rows[0].amount]));
}

/** Everything that is known of a trial's jackets: what they are, and what their pieces lasted. */
export function jacketOf(
  trial: Trial,
  rows: TrialRows,
  cables: readonly CableFindings[],
  { level, seed }: JacketOptions,
): JacketFound {
  const read = readEndurance(trial);
  const exposed = exposuresOf(trial, rows.tools, cables, level);
  const walls = rows.cables
    .map((c, i) => jacketCableOf(c, cables[i], level))
    .filter(
      ({ wall, wall_doubt, mass_per_metre, density }) =>
        wall !== null || wall_doubt !== '' || mass_per_metre !== null || density !== null,
    );
  const wallOf = new Map(walls.flatMap(({ cable, wall }) => (wall ? [[cable, wall.mean.value] as const] : [])));
  const warnings = [...read.warnings, ...exposed.warnings];
  if (walls.length === 0 && read.tests.length === 0 && exposed.exposures.length === 0)
    return { jacket: null, warnings };
  const tests = read.tests.map((test) => {
    const context = { cables, wallOf, level, seed: seedOf(seed, test) };
    const found = test.kind === 'amount' ? amountTest(test, context) : passedTest(test, context);
    return { read: test, found: { ...found, notes: testNotes(test, read.tests) }, used: usedBefore(test, read.tests) };
  });
  const endurance = tests.map(({ found }) => found);
  return {
    jacket: {
      cables: walls,
      endurance,
      exposures: exposed.exposures,
      sentence: [thickestSentence(walls), ...endurance.map((t) => t.sentence)].filter(Boolean).join(' '),
    },
    warnings: [...warnings, ...jacketWarnings(walls, tests, level)],
  };
}

/** Which wall is the thinnest at its least place, and which the thickest on average. */
function thickestSentence(walls: Jacket['cables']): string {
  const compared = walls.filter((c) => c.role === 'compared' && c.wall);
  if (compared.length < 2) return '';
  const byMean = [...compared].sort((a, b) => b.wall!.mean.value - a.wall!.mean.value);
  const [thickest, thinnest] = [byMean[0], byMean[byMean.length - 1]];
  const mm = (c: (typeof compared)[number]) => `${c.wall!.mean.value.toFixed(2)} mm`;
  if (mm(thinnest) === mm(thickest)) return `The walls are alike, ${mm(thickest)} on average.`;
  return `Walls run from ${mm(thinnest)} (${thinnest.name}) to ${mm(thickest)} (${thickest.name}).`;
}
